<#import "lib.ftl" as l>
<#assign w = v.view>
<#assign n2 = w.turns>
<@l.page title=t("rehearsal.title") over=t("rehearsal.over") heading=n("rehearsal.heading", n2.changed, w.records) under=t("rehearsal.under", w.asOf)>

<#macro pack p hash><@l.own p.title /> (${p.id}, ${t("judged.edition", p.edition)})<br><span class="soft hash">SHA-256 ${hash}</span></#macro>
<dl class="plain">
<div><dt>${t("rehearsal.before")}</dt><dd><@pack v.before v.beforeHash /></dd></div>
<div><dt>${t("rehearsal.after")}</dt><dd><@pack v.after v.afterHash /></dd></div>
</dl>
<#if v.isSame()><p class="cut">${t("rehearsal.same")}</p></#if>
<dl class="counts">
<div><dt>${t("rehearsal.short.new")}</dt><dd>${n2.newlyShort}</dd></div>
<div><dt>${t("rehearsal.short.first")}</dt><dd>${n2.firstShort}</dd></div>
<div><dt>${t("rehearsal.short.gone")}</dt><dd>${n2.noLongerShort}</dd></div>
<div><dt>${t("rehearsal.short.none")}</dt><dd>${n2.noneShort}</dd></div>
<div><dt>${t("rehearsal.unknown.new")}</dt><dd>${n2.newlyUnknown}</dd></div>
<div><dt>${t("rehearsal.unknown.gone")}</dt><dd>${n2.noLongerUnknown}</dd></div>
<#if (n2.newlyWaived + n2.noLongerWaived > 0)>
<div><dt>${t("rehearsal.waived.new")}</dt><dd>${n2.newlyWaived}</dd></div>
<div><dt>${t("rehearsal.waived.gone")}</dt><dd>${n2.noLongerWaived}</dd></div>
</#if>
</dl>
<#if (n2.older > 0)><p class="cut">${n("rehearsal.older", n2.older, v.after.edition)}</p></#if>
<p>${t("rehearsal.counted")}</p>
<p>${t("rehearsal.files")}</p>
<#if (w.setAside > 0)><p class="cut">${n("rehearsal.set.aside", w.setAside)}</p></#if>

<#macro groups id caption column lines>
<#if lines?has_content>
<@l.table caption=caption id=id list=true columns=[column, t("col.records"), t("rehearsal.changed"), t("rehearsal.short.new"), t("rehearsal.short.gone")]>
<#list lines as g>
<@l.row><@l.head column><#if g.name?has_content>${g.name}<#else>${t("rehearsal.not.given")}</#if></@l.head><@l.cell t("col.records") "number">${g.records}</@l.cell><@l.cell t("rehearsal.changed") "number">${g.changed}</@l.cell><@l.cell t("rehearsal.short.new") "number">${g.newlyShort}</@l.cell><@l.cell t("rehearsal.short.gone") "number">${g.noLongerShort}</@l.cell></@l.row>
</#list>
</@l.table>
</#if>
</#macro>

<#macro side parts><#if parts?has_content><#list parts as p><#if p.isChanged()><mark>${p.text}</mark><#else>${p.text}</#if><#sep> </#list><#else><span class="blank">${t("rehearsal.nothing")}</span></#if></#macro>

<@l.section id="differs" title=t("rehearsal.differs")>
<#if v.differences?has_content>
<p>${t("rehearsal.differs.how")}</p>
<#list v.differences as d>
<article class="rule" aria-labelledby="differs-${d.id}">
<h3 id="differs-${d.id}"><@l.own d.title /> <span class="soft">(${d.id})</span></h3>
<p>${d.judged}<#if d.older?has_content> <b>${d.older}</b></#if></p>
<@l.table caption=t("rehearsal.differs.caption", d.id) quiet=true class="sides" columns=[t("rehearsal.what"), t("rehearsal.from"), t("rehearsal.to")]>
<#list d.lines as x>
<@l.row><@l.head t("rehearsal.what")>${x.what}</@l.head><@l.cell t("rehearsal.from")><@side x.before /></@l.cell><@l.cell t("rehearsal.to")><@side x.after /></@l.cell></@l.row>
</#list>
</@l.table>
</article>
</#list>
<#else><p>${t("rehearsal.differs.none")}</p></#if>
</@l.section>

<@l.section id="by-rule" title=t("rehearsal.rules")>
<#if v.rules?has_content>
<@l.table caption=t("rehearsal.rules.caption") id="list-turns" list=true quiet=true columns=[t("col.rule"), t("rehearsal.from"), t("rehearsal.to"), t("col.records")]>
<#list v.rules as c>
<@l.row><@l.head t("col.rule")><@l.own c.title /> <span class="soft">(${c.id})</span></@l.head><@l.cell t("rehearsal.from") "word">${c.from}</@l.cell><@l.cell t("rehearsal.to") "word">${c.to}</@l.cell><@l.cell t("col.records") "number">${c.records}</@l.cell></@l.row>
</#list>
</@l.table>
<#else><p>${t("rehearsal.none")}</p></#if>
</@l.section>

<#if w.years?has_content>
<@l.section id="when" title=t("rehearsal.when")>
<@groups "list-years" t("rehearsal.years") t("rehearsal.year") w.years />
</@l.section>
</#if>

<#if w.zones?has_content>
<@l.section id="where" title=t("rehearsal.where")>
<@groups "list-zones" t("rehearsal.zones") t("rehearsal.zone") w.zones />
<@groups "list-contractors" t("rehearsal.contractors") t("rehearsal.licence") w.contractors />
</@l.section>
</#if>

<#if v.changes?has_content>
<@l.section id="by-record" title=t("rehearsal.records")>
<#if v.cut?has_content><p class="cut">${v.cut}</p></#if>
<@l.table caption=t("rehearsal.records.caption") id="list-changes" list=true quiet=true columns=[t("col.record"), t("rehearsal.completed"), t("col.rule"), t("rehearsal.value"), t("rehearsal.from"), t("rehearsal.to"), t("col.place")]>
<#list v.changes as c>
<@l.row><@l.head t("col.record") "id">${c.record}</@l.head><@l.cell t("rehearsal.completed") "word">${c.completed}</@l.cell><@l.cell t("col.rule")><@l.own c.title /></@l.cell><@l.cell t("rehearsal.value")>${c.value}</@l.cell><@l.cell t("rehearsal.from") "word">${c.from}<#if c.limitFrom?has_content> <span class="soft">(${t("rehearsal.limit", c.limitFrom)})</span></#if></@l.cell><@l.cell t("rehearsal.to") "word">${c.to}<#if c.limitTo?has_content> <span class="soft">(${t("rehearsal.limit", c.limitTo)})</span></#if></@l.cell><@l.cell t("col.place")>${c.place}</@l.cell></@l.row>
</#list>
</@l.table>
</@l.section>
</#if>
</@l.page>
