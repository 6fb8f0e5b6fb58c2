<#import "lib.ftl" as l>
<#assign w = v.view>
<@l.page title=t("rehearsal.title") over=t("rehearsal.over") heading=n("rehearsal.heading", w.changedRecords, w.records) under=t("rehearsal.under", w.asOf)>

<dl class="plain">
<div><dt>${t("rehearsal.before")}</dt><dd><@l.own v.before.title /> (${v.before.id}, ${t("judged.edition", v.before.edition)})</dd></div>
<div><dt>${t("rehearsal.after")}</dt><dd><@l.own v.after.title /> (${v.after.id}, ${t("judged.edition", v.after.edition)})</dd></div>
</dl>
<dl class="counts">
<div><dt>${t("rehearsal.short.new")}</dt><dd>${w.newlyShort}</dd></div>
<div><dt>${t("rehearsal.short.gone")}</dt><dd>${w.noLongerShort}</dd></div>
</dl>
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

<@l.section id="by-rule" title=t("rehearsal.rules")>
<#if v.rules?has_content>
<@l.table caption=t("rehearsal.rules.caption") id="list-rules" list=true quiet=true columns=[t("col.rule"), t("rehearsal.from"), t("rehearsal.to"), t("col.records")]>
<#list v.rules as c>
<@l.row><@l.head t("col.rule")><@l.own c.title /> <span class="soft">(${c.what})</span><#if c.asks?has_content><br><span class="soft">${t("rehearsal.from")}${t("colon")} ${c.asked}.</span><br><span class="soft">${t("rehearsal.to")}${t("colon")} ${c.asks}.</span><#else><br><span class="soft">${c.asked}. ${t("rehearsal.asks.same")}</span></#if></@l.head><@l.cell t("rehearsal.from") "word">${c.from}</@l.cell><@l.cell t("rehearsal.to") "word">${c.to}</@l.cell><@l.cell t("col.records") "number">${c.records}</@l.cell></@l.row>
</#list>
</@l.table>
<#else><p>${t("rehearsal.none")}</p></#if>
</@l.section>

<#if w.zones?has_content>
<@l.section id="where" title=t("rehearsal.where")>
<@groups "list-zones" t("rehearsal.zones") t("rehearsal.zone") w.zones />
<@groups "list-contractors" t("rehearsal.contractors") t("rehearsal.licence") w.contractors />
</@l.section>
</#if>

<#if v.changes?has_content>
<@l.section id="by-record" title=t("rehearsal.records")>
<#if v.cut?has_content><p class="cut">${v.cut}</p></#if>
<@l.table caption=t("rehearsal.records.caption") id="list-records" list=true quiet=true columns=[t("col.record"), t("col.rule"), t("rehearsal.from"), t("rehearsal.to"), t("col.place")]>
<#list v.changes as c>
<@l.row><@l.head t("col.record")>${c.what}</@l.head><@l.cell t("col.rule")><@l.own c.title /></@l.cell><@l.cell t("rehearsal.from") "word">${c.from}</@l.cell><@l.cell t("rehearsal.to") "word">${c.to}</@l.cell><@l.cell t("col.place")>${c.place}</@l.cell></@l.row>
</#list>
</@l.table>
</@l.section>
</#if>
</@l.page>
