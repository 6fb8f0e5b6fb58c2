<#import "lib.ftl" as l>
<#assign b = v.batch>
<#macro cut cap><#if v.cuts[cap]??><p class="cut">${v.cuts[cap]}</p></#if></#macro>
<#-- What a column of shares sorts by; less than nothing where there is none. -->
<#function share part of><#return (of == 0)?then("-1", (part / (of == 0)?then(1, of))?c)></#function>
<#macro rules rows id caption>
<@l.table caption=caption id=id list=true class="rules" quiet=true columns=[t("col.rule"), t("col.kind"), t("outcome.falls_short"), t("outcome.cannot_tell"), t("outcome.meets"), t("outcome.waived"), t("outcome.not_applicable"), t("col.share")]>
<#list rows as r>
<@l.row>
<@l.head t("col.rule")><@l.own r.title /><#if b.tallies?size gt 1> <span class="soft">(${r.pack})</span></#if></@l.head>
<@l.cell t("col.kind") "word">${t("kind.short.one." + r.kind)}</@l.cell>
<@l.cell t("outcome.falls_short") "number">${r.fallsShort}</@l.cell>
<@l.cell t("outcome.cannot_tell") "number">${r.cannotTell}</@l.cell>
<@l.cell t("outcome.meets") "number">${r.meets}</@l.cell>
<@l.cell t("outcome.waived") "number">${r.waived}</@l.cell>
<@l.cell t("outcome.not_applicable") "number">${r.notApplicable}</@l.cell>
<@l.cell t("col.share") "" share(r.fallsShort, r.fallsShort + r.meets)>${svg(r.bar)}<#if r.rate?has_content>${r.rate}<#else>${t("rate.none")}</#if></@l.cell>
</@l.row>
</#list>
</@l.table>
</#macro>
<#-- On a narrow page a row tells only what there is. -->
<#function many count><#return (count == 0)?then("number zero", "number")></#function>
<@l.page title=t("batch.title") over=t("batch.over") heading=n("batch.heading", b.screened) under=t("batch.under", b.asOf, b.version)>

<@l.steps v.steps />

<dl class="counts">
<div><dt>${t("batch.read")}</dt><dd>${b.rowsRead}</dd></div>
<div><dt>${t("batch.screened")}</dt><dd>${b.screened}</dd></div>
<div class="is-cannot_tell"><dt>${t("batch.aside")}</dt><dd>${b.setAside}</dd></div>
<div class="is-falls_short"><dt>${t("batch.with")}</dt><dd>${b.withFindings}</dd></div>
</dl>
<h2 class="unseen">${t("batch.outcomes")}</h2>
<p class="soft">${t("batch.outcomes.lead")}</p>
<dl class="counts">
<#list v.outcomes as key, count><div class="${key?replace("outcome.", "is-")}"><dt>${t(key)}</dt><dd>${count}</dd></div></#list>
</dl>
<p class="soft">${t("batch.kinds.lead")}</p>
<dl class="counts">
<#list v.kinds as key, count><div><dt>${t(key)}</dt><dd>${count}</dd></div></#list>
</dl>
<#include "followup.ftl">
<nav aria-label="${t("page.parts")}">
<ul class="jump">
<li><a href="#records">${t("records.title")}</a></li>
<li><a href="#rules">${t("rules.title")}</a></li>
<#if v.asks?has_content><li><a href="#ask">${t("ask.title")}</a></li></#if>
<#if b.contractors?has_content><li><a href="#contractors">${t("contractors.title")}</a></li></#if>
<#if v.grid.rows?has_content><li><a href="#grid">${t("grid.title")}</a></li></#if>
<#if v.maps?has_content><li><a href="#where">${t("map.heading")}</a></li></#if>
<#if v.cross??><li><a href="#cross">${t("cross.title")}</a></li></#if>
<#if b.setAside gt 0><li><a href="#aside">${t("aside.title")}</a></li></#if>
<li><a href="#reading">${t("reading.title")}</a></li>
<li><a href="#judged">${t("judged.title")}</a></li>
</ul>
</nav>

<@l.section id="records" title=t("records.title")>
<#if b.records?has_content>
<p>${t("records.lead")}</p>
<@cut "RECORDS_ON_PAGE" /><@cut "SHEETS" />
<@l.table caption=t("records.caption") id="list-records" list=true quiet=true columns=[t("col.record"), t("col.first"), t("kind.short.deficiency"), t("kind.short.discrepancy"), t("kind.short.omission"), t("kind.short.advisory"), t("outcome.cannot_tell"), t("col.contractor"), t("col.place")]>
<#list b.records as r>
<@l.row>
<@l.head t("col.record")><#if r.sheet?has_content><a href="${r.sheet}">${r.recordId}</a><#else>${r.recordId}</#if></@l.head>
<@l.cell t("col.first")>${r.first}</@l.cell>
<@l.cell t("kind.short.deficiency") many(r.kinds.deficiency)>${r.kinds.deficiency}</@l.cell>
<@l.cell t("kind.short.discrepancy") many(r.kinds.discrepancy)>${r.kinds.discrepancy}</@l.cell>
<@l.cell t("kind.short.omission") many(r.kinds.omission)>${r.kinds.omission}</@l.cell>
<@l.cell t("kind.short.advisory") many(r.kinds.advisory)>${r.kinds.advisory}</@l.cell>
<@l.cell t("outcome.cannot_tell") many(r.cannotTell)>${r.cannotTell}</@l.cell>
<@l.cell t("col.contractor") "who">${r.driller}<#if r.installer?has_content && r.installer != r.driller><#if r.driller?has_content>, </#if>${r.installer}</#if></@l.cell>
<@l.cell t("col.place")>${t("place", r.file, r.row)}</@l.cell>
</@l.row>
</#list>
</@l.table>
<#else><p>${t("records.none")}</p></#if>
</@l.section>

<@l.section id="rules" title=t("rules.title")>
<p>${t("rules.lead")}</p>
<#if v.rules?has_content><@rules rows=v.rules id="list-rules" caption=t("rules.caption") /><#else><p>${t("rules.none")}</p></#if>
<#if v.unknownRules?has_content><details><summary>${t("rules.unknown")} <span class="soft">(${v.unknownRules?size})</span> <@l.unprinted /></summary><@rules rows=v.unknownRules id="list-unknown" caption=t("rules.unknown") /></details></#if>
<#if v.quietRules?has_content><details><summary>${t("rules.quiet")} <span class="soft">(${v.quietRules?size})</span> <@l.unprinted /></summary><@rules rows=v.quietRules id="list-quiet" caption=t("rules.quiet") /></details></#if>
</@l.section>

<#if v.asks?has_content>
<@l.section id="ask" title=t("ask.title")>
<p>${t("ask.batch")}</p>
<@cut "ASKS_COUNTED" />
<#assign asksFirst = 5>
<#macro asked a><li><b>${a.entry}</b>${t("colon")} ${n("ask.batch.line", a.outcomes, a.records)}</li></#macro>
<ol class="asks"><#list v.asks as a><#if a?index lt asksFirst><@asked a /></#if></#list></ol>
<#if v.asks?size gt asksFirst>
<details><summary>${n("ask.rest", v.asks?size - asksFirst)} <@l.unprinted /></summary>
<ol class="asks" start="${asksFirst + 1}"><#list v.asks as a><#if a?index gte asksFirst><@asked a /></#if></#list></ol>
</details>
</#if>
<#if v.ruleAsks?has_content>
<details><summary>${t("ask.rules")} <span class="soft">(${v.ruleAsks?size})</span> <@l.unprinted /></summary>
<@cut "RULE_ASKS_ON_PAGE" />
<@l.table caption=t("ask.rules") id="list-asks" list=true quiet=true columns=[t("col.rule"), t("outcome.cannot_tell"), t("ask.tells")]>
<#list v.ruleAsks as a>
<@l.row><@l.head t("col.rule")><@l.own a.title /><#if b.tallies?size gt 1> <span class="soft">(${a.pack})</span></#if></@l.head><@l.cell t("outcome.cannot_tell") "number">${a.records}</@l.cell><@l.cell t("ask.tells")>${a.entries}</@l.cell></@l.row>
</#list>
</@l.table>
</details>
</#if>
</@l.section>
</#if>

<#if b.contractors?has_content>
<@l.section id="contractors" title=t("contractors.title")>
<p>${t("contractors.lead")}</p>
<@cut "CONTRACTORS_ON_PAGE" /><@cut "NOTICES" />
<@l.table caption=t("contractors.caption") id="list-contractors" list=true quiet=true columns=[t("col.licence"), t("col.records"), t("col.with"), t("contractors.share"), t("kind.short.deficiency"), t("kind.short.discrepancy"), t("kind.short.omission"), t("kind.short.advisory"), t("col.notice")]>
<#list v.contractors as r>
<#assign c = r.line>
<@l.row>
<@l.head t("col.licence")><#if c.licence?has_content>${c.licence}<#else>${t("contractors.none")}</#if></@l.head>
<@l.cell t("col.records") "number">${c.records}</@l.cell>
<@l.cell t("col.with") "number">${c.withFindings}</@l.cell>
<@l.cell t("contractors.share") "" share(c.withFindings, c.records)>${svg(r.bar)}<#if r.rate?has_content>${r.rate}<#else>${t("rate.none")}</#if></@l.cell>
<@l.cell t("kind.short.deficiency") many(c.kinds.deficiency)>${c.kinds.deficiency}</@l.cell>
<@l.cell t("kind.short.discrepancy") many(c.kinds.discrepancy)>${c.kinds.discrepancy}</@l.cell>
<@l.cell t("kind.short.omission") many(c.kinds.omission)>${c.kinds.omission}</@l.cell>
<@l.cell t("kind.short.advisory") many(c.kinds.advisory)>${c.kinds.advisory}</@l.cell>
<@l.cell t("col.notice")><#if c.notice?has_content><a href="${c.notice}">${t("contractors.notice")}<span class="unseen"> ${c.licence}</span></a></#if></@l.cell>
</@l.row>
</#list>
</@l.table>
</@l.section>
</#if>

<#if v.grid.rows?has_content>
<@l.section id="grid" title=t("grid.title")>
<p>${t("grid.lead")}</p>
<#if v.grid.cut?has_content><p class="cut">${v.grid.cut}</p></#if>
<#if v.grid.empty?has_content><p class="cut">${v.grid.empty}</p></#if>
<table role="table" class="stack grid" id="list-grid">
<caption class="unseen">${t("grid.title")}</caption>
<thead role="rowgroup"><tr role="row"><th role="columnheader" scope="col">${t("col.rule")}</th><th role="columnheader" scope="col">${t("grid.all")}</th><#list v.grid.columns as c><th role="columnheader" scope="col"<#if c.few> class="few"</#if>>${c.name}<span class="count">${c.records}</span></th></#list></tr></thead>
<tbody role="rowgroup">
<#list v.grid.rows as r>
<@l.row><@l.head t("col.rule")><@l.own r.title /><#if b.tallies?size gt 1> <span class="soft">(${r.pack})</span></#if></@l.head><@l.cell t("grid.all") "number">${r.all} <span class="soft">${r.share}</span></@l.cell><#list r.cells as c><td role="cell" data-l="${v.grid.columns[c?index].name}" class="number<#if c.count == 0> none</#if><#if c.isMuch()> much</#if><#if v.grid.columns[c?index].few> few</#if>"><span><#if c.count == 0>–<#else>${c.count} <span class="soft">${c.share}</span>${svg(c.bar)}</#if></span></td></#list></@l.row>
</#list>
</tbody>
</table>
</@l.section>
</#if>

<#if v.maps?has_content>
<@l.section id="where" title=t("map.heading")>
<div class="drawings"><#list v.maps as map><@l.drawing map /></#list></div>
</@l.section>
</#if>

<#include "cross.ftl">

<#if b.setAside gt 0>
<@l.section id="aside" title=t("aside.title")>
<p>${t("aside.lead")}</p>
<@cut "SET_ASIDE_ON_PAGE" />
<@l.table caption=t("aside.caption") id="list-aside" list=true quiet=true columns=[t("col.place"), t("col.column"), t("col.reason"), t("col.text")]>
<#list b.setAsideLines as s>
<@l.row>
<@l.head t("col.place")><#if s.row gt 0>${t("place", s.file, s.row)}<#else>${s.file}</#if></@l.head>
<@l.cell t("col.column")>${s.column}</@l.cell>
<@l.cell t("col.reason")><@l.own s.reason /></@l.cell>
<@l.cell t("col.text")>${t("quoted", s.text)}</@l.cell>
</@l.row>
</#list>
</@l.table>
</@l.section>
</#if>

<@l.section id="reading" title=t("reading.title")>
<p>${t("reading.sum", b.rowsRead, b.screened, b.setAside)}</p>
<@cut "INPUTS_ON_PAGE" />
<#if b.inputs?has_content>
<@l.table caption=t("reading.caption") id="list-inputs" list=true quiet=true columns=[t("col.file"), t("col.format"), t("batch.read"), t("batch.screened"), t("reading.joined"), t("batch.aside"), t("col.note")]>
<#list b.inputs as i>
<@l.row>
<@l.head t("col.file")>${i.file}</@l.head>
<@l.cell t("col.format")><@l.own i.format /></@l.cell>
<@l.cell t("batch.read") "number">${i.rowsRead}</@l.cell>
<@l.cell t("batch.screened") "number">${i.screened}</@l.cell>
<@l.cell t("reading.joined") "number">${i.joined}</@l.cell>
<@l.cell t("batch.aside") "number">${i.setAside}</@l.cell>
<@l.cell t("col.note")><#list i.notes as note><@l.own note /><#sep><br></#list></@l.cell>
</@l.row>
</#list>
</@l.table>
</#if>
<#include "reading.ftl">
<#if b.notRead?has_content><p>${t("reading.not")} <#list b.notRead as f>${f}<#sep>, </#list>.</p></#if>
</@l.section>

<@l.cautions b.cautions />

<@l.section id="judged" title=t("judged.title")>
<@l.english />
<#list v.packs as p>
<h3><@l.own p.title /></h3>
<p>${t("judged.edition", p.edition)} · <@l.own p.authority /></p>
<#if p.notice?has_content><p><@l.own p.notice /></p></#if>
<#if p.builtOn?has_content><p>${t("judged.built")} <#list p.builtOn as x>${x}<#sep>, </#list>.</p></#if>
</#list>
<p>${t("judged.asof", b.asOf)}</p>
<details><summary>${t("sources.title")} <span class="soft">(${v.sources?size})</span> <@l.unprinted /></summary>
<ul><#list v.sources as s><li><@l.source s /></li></#list></ul></details>
<#if v.links?has_content>
<h3>${t("files.title")}</h3>
<ul><#list v.links as f><li><a href="${f}">${f}</a></li></#list></ul>
</#if>
</@l.section>
</@l.page>
