<#import "lib.ftl" as l>
<@l.page title=v.pack.title over=t("rulebook.over") heading=v.pack.title under=t("judged.edition", v.pack.edition) isOwn=true>

<p><@l.own v.pack.authority /><#if v.jurisdictions?has_content> · ${t("rulebook.codes")} <#list v.jurisdictions as j>${j}<#sep>, </#list></#if></p>
<#if v.pack.notice?has_content><p class="lead"><@l.own v.pack.notice /></p></#if>
<p>${t("rulebook.day", v.judgedBy)}</p>
<p>${t("rulebook.units")}</p>
<@l.english />
<#if v.pack.builtOn?has_content><p>${t("judged.built")} <#list v.pack.builtOn as b>${b}<#sep>, </#list>.</p></#if>
<#if v.mustApply?has_content><p>${t("rulebook.must")} <#list v.mustApply as m>${m}<#sep>, </#list>.</p></#if>

<nav aria-label="${t("page.parts")}">
<ul class="jump">
<#list v.groups as g><li><a href="#${g.heading?replace(".", "-")}">${t(g.heading)}</a> <span class="soft">(${g.rules?size})</span></li></#list>
<#if v.tables?has_content><li><a href="#tables">${t("rulebook.tables")}</a></li></#if>
<li><a href="#sources">${t("sources.title")}</a></li>
<#if v.drops?has_content || v.replaced?has_content><li><a href="#changed">${t("rulebook.changed")}</a></li></#if>
</ul>
</nav>

<#list v.groups as g>
<@l.section id=g.heading?replace(".", "-") title=t(g.heading)>
<#list g.rules as r>
<article class="rule" id="rule-${r.id}" aria-labelledby="rule-${r.id}-title">
<h3 id="rule-${r.id}-title"><@l.own r.title /></h3>
<p class="under"><b>${t("kind.short.one." + r.kind)}</b> · ${r.id}<#if r.pack?has_content> · ${t("rulebook.from", r.pack)}</#if><#if r.replaces?has_content> · ${t("rulebook.replaces", r.replaces)}<#if r.replacesBecause?has_content>: <@l.own r.replacesBecause /></#if></#if></p>
<#list r.texts as x>
<div class="text">
<#if x.days?has_content><p><b>${x.days}</b></p></#if>
<#if x.sentences?has_content><#list x.sentences as s><p class="sentence">${s}.</p></#list><#else><p class="sentence">${t("outcome.person")} <@l.own r.ask /></p></#if>
<#if x.when?has_content><p>${t("rulebook.when")} ${x.when}.</p></#if>
<p class="soft">${t("finding.source")}${t("colon")} <@l.source x.source /></p>
</div>
</#list>
<dl class="plain">
<#if r.when?has_content><div><dt>${t("rulebook.when")}</dt><dd>${r.when}.</dd></div></#if>
<#if r.judgedBy?has_content><div><dt>${t("rulebook.ownday")}</dt><dd>${r.judgedBy}.</dd></div></#if>
<#if r.subject?has_content><div><dt>${t("rulebook.subject")}</dt><dd>${r.subject}</dd></div></#if>
<div><dt>${t("finding.because")}${t("colon")}</dt><dd><@l.own r.because /></dd></div>
<div><dt>${t("finding.remedy")}${t("colon")}</dt><dd><@l.own r.remedy /></dd></div>
<#if r.atOnce?has_content><div><dt>${t("finding.at_once")}${t("colon")}</dt><dd><@l.own r.atOnce /></dd></div></#if>
</dl>
<#if r.examples?has_content>
<details><summary>${t("rulebook.examples")} <span class="soft">(${r.examples?size})</span> <@l.unprinted /></summary>
<ul><#list r.examples as e><li><#list e.given as given>${given}<#sep>; </#list>: <b>${t(e.expect)}</b></li></#list></ul>
</details>
</#if>
</article>
</#list>
</@l.section>
</#list>

<#if v.tables?has_content>
<@l.section id="tables" title=t("rulebook.tables")>
<p>${t("rulebook.first")}</p>
<#list v.tables as x>
<@l.table caption=x.name columns=x.by + [t("rulebook.limit")]>
<#list x.rows as row>
<@l.row><#list row as text><@l.cell (x.by + [t("rulebook.limit")])[text?index]>${text}</@l.cell></#list></@l.row>
</#list>
</@l.table>
</#list>
</@l.section>
</#if>

<@l.section id="sources" title=t("sources.title")>
<@l.table caption=t("rulebook.sources") columns=[t("rulebook.name"), t("col.source"), t("rulebook.rules")] quiet=true>
<#list v.sources as s>
<@l.row><@l.head t("rulebook.name")>${s.id}</@l.head><@l.cell t("col.source")><@l.source s.line /></@l.cell><@l.cell t("rulebook.rules") "number">${s.rules}</@l.cell></@l.row>
</#list>
</@l.table>
</@l.section>

<#if v.drops?has_content || v.replaced?has_content>
<@l.section id="changed" title=t("rulebook.changed")>
<ul>
<#list v.replaced as r><li><a href="#rule-${r.id}"><@l.own r.title /></a>: ${t("rulebook.replaces", r.replaces)}<#if r.replacesBecause?has_content>: <@l.own r.replacesBecause /></#if></li></#list>
<#list v.drops as d><li>${t("rulebook.dropped", d.rule, d.pack)} <@l.own d.because /></li></#list>
</ul>
</@l.section>
</#if>
</@l.page>
