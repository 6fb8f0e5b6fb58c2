<#import "lib.ftl" as l>
<#macro taken w><#if w.assumed?has_content><br><span class="soft">${t("workings.assumed")} <#list w.assumed as a>${a}<#sep>${t("semicolon")} </#list>.</span></#if></#macro>
<#-- The few that would settle most; the rest is folded away. -->
<#assign asksFirst = 8>
<#-- At the desk each leads to its field, which is on the page around this one. -->
<#macro entries some><b><#list some as e><#if index?has_content>${e.label}<#else><span data-entry="${e.key}">${e.label}</span></#if><#sep>, </#list></b></#macro>
<#macro asked a><li><@entries a.entries />${t("colon")} ${n("ask.settles", a.settles)}<#if a.rules?has_content> <span class="soft">(<#list a.rules as r><@l.own r /><#sep>${t("semicolon")} </#list><#if a.settles gt a.rules?size>${t("semicolon")} …</#if>)</span></#if></li>
</#macro>
<@l.page title=t("sheet.title", v.id) over=t("sheet.over") heading=t("sheet.heading", v.id) under=t("sheet.under", index?has_content?then(v.place, t("sheet.form")), v.asOf, v.askOf) isWithin=!index?has_content>
<#if v.elsewhere?has_content><p class="cut">${v.elsewhere}</p></#if>

<#if remark?has_content><p class="cut">${remark}</p></#if>
<@l.steps v.steps />

<dl class="counts">
<#list v.counts as key, count><div class="${key?replace("outcome.", "is-")}"><dt>${t(key)}</dt><dd>${count}</dd></div></#list>
</dl>

<@l.cautions v.cautions />

<#if v.findings?has_content>
<@l.section id="findings" title=t("findings.title")>
<#list v.findings as f>
<article class="finding ${f.kind}" id="${f.anchor}" aria-labelledby="${f.anchor}-title">
<p class="kind">${t(f.heading)}</p>
<h3 id="${f.anchor}-title"><span class="letter">${f.letter}</span> ${f.sentence}</h3>
<dl>
<dt>${t("finding.asked")}</dt><dd><@l.own f.title />.<#if f.why.requirement?has_content><br>${f.why.requirement}.</#if></dd>
<#if f.why.withNumbers?has_content><dt>${t(f.why.withNumbers?matches(r".*[0-9].*", "s")?then("finding.sum", "finding.sum.words"))}</dt><dd class="sum">${f.why.withNumbers}</dd></#if>
<#list f.why.workings as w>
<dt>${w.meaning}</dt><dd class="sum"><@l.own w.formula /><br>= <@l.own w.withNumbers /><br>= <b>${w.result}</b> <span class="soft">(<@l.origin w.source />)</span><@taken w /></dd>
</#list>
<dt>${t("finding.because")}</dt><dd><@l.own f.because /></dd>
<#if f.atOnce?has_content><dt>${t("finding.at_once")}</dt><dd class="remedy"><@l.own f.atOnce /></dd></#if>
<dt>${t("finding.remedy")}</dt><dd class="remedy"><@l.own f.remedy /></dd>
<dt>${t("finding.whose")}</dt><dd>${f.whose}. <span class="soft">${t("finding.whose.work")}</span></dd>
<#if f.settled?has_content><dt>${t("finding.settled")}</dt><dd>${f.settled}</dd></#if>
<#if f.reading?has_content><dt>${t("finding.reading")}</dt><dd>${f.reading}. ${t("finding.reading.never")}</dd></#if>
<#if f.why.remarks?has_content || f.near?has_content><dt>${t("finding.judged")}</dt><dd><#list f.why.remarks as r>${r} </#list>${f.near}</dd></#if>
<dt>${t("finding.source")}</dt><dd><@l.source f.source /></dd>
<#if f.why.condition?has_content><dt>${t("rulebook.when")}</dt><dd class="soft">${f.why.condition}.</dd></#if>
</dl>
</article>
</#list>
</@l.section>
</#if>

<#if v.asks?has_content || v.open?has_content>
<@l.section id="ask" title=t("ask.title")>
<#if v.open?has_content>
<p><b>${n("ask.open", v.open?size)}</b></p>
<ul class="asks">
<#list v.open as o><li>${o.sentence} <span class="soft">(<@l.own o.title />)</span><#if o.entries?has_content> ${t("ask.open.of")} <@entries o.entries />.</#if></li></#list>
</ul>
</#if>
<#if v.asks?has_content>
<p>${t("ask.lead")}</p>
<ol class="asks">
<#list v.asks as a><#if a?index lt asksFirst><@asked a /></#if></#list>
</ol>
<#if v.asks?size gt asksFirst>
<details class="prints">
<summary>${n("ask.rest", v.asks?size - asksFirst)} <@l.unprinted /></summary>
<ol class="asks" start="${asksFirst + 1}">
<#list v.asks as a><#if a?index gte asksFirst><@asked a /></#if></#list>
</ol>
</details>
</#if>
</#if>
</@l.section>
</#if>

<#if v.drawings?has_content || v.undrawn?has_content>
<@l.section id="drawings" title=t("drawings.title")>
<#if v.drawings?has_content><p>${t("drawings.lead")}<#list v.doubts as doubt> ${t("drawings.reading", doubt)}</#list></p>
<div class="drawings"><#list v.drawings as d><@l.drawing d /></#list></div></#if>
<#list v.undrawn as line><p class="soft">${line}</p></#list>
</@l.section>
</#if>

<@l.section id="outcomes" title=t("outcomes.title")>
<#list v.outcomes as g>
<details<#if g.open> open</#if>>
<summary>${t(g.key)} <span class="soft">(${g.lines?size})</span> <@l.unprinted /></summary>
<@l.table caption=t(g.key + ".caption") columns=[t("col.rule"), t("col.how"), t("col.source")] quiet=true>
<#list g.lines as o>
<@l.row>
<@l.head t("col.rule")><@l.own o.title /><#if o.letter?has_content> <a href="#finding-${o.letter?lower_case}" aria-label="${t("finding.letter", o.letter)}">${o.letter}</a></#if></@l.head>
<@l.cell t("col.how")>
<#if o.ask?has_content>${t("outcome.person")} <@l.own o.ask /><#elseif o.numbers?has_content><span class="sum">${o.numbers}</span><#else>${o.requirement}</#if>
<#if o.needs?has_content><br>${t("outcome.needs")} <#list o.needs as need>${need}<#sep>, </#list>.</#if>
<#if o.variance?has_content><br>${t("outcome.variance", o.variance)}</#if>
<#if o.standsFor?has_content><br>${t("outcome.stands")} <@l.own o.standsFor /></#if>
<#if o.remarks?has_content><br><span class="soft"><#list o.remarks as r>${r} </#list></span></#if>
</@l.cell>
<@l.cell t("col.source")><@l.source o.source /></@l.cell>
</@l.row>
</#list>
</@l.table>
</details>
</#list>
</@l.section>

<#if v.variances?has_content>
<@l.section id="variances" title=t("variances.title")>
<ul>
<#list v.variances as w>
<li><b><#if w.title?has_content><@l.own w.title /><#else>${w.rule}</#if></b>: <#if w.reference?has_content>${t("variance.reference", w.reference)}<#else>${t("variance.bare")}</#if> <#if w.why?has_content><strong>${t(w.why)}</strong><#if w.near?has_content> ${t("variance.near", w.near)} (<@l.own w.nearTitle />)</#if></#if></li>
</#list>
</ul>
</@l.section>
</#if>

<#if v.workings?has_content || v.nearWorkings?has_content>
<@l.section id="workings" title=t("workings.title")>
<p>${t("workings.lead")}</p>
<#if v.chlorine><p><b>${t("caution.chlorine")}</b></p></#if>
<#if v.workings?has_content>
<details><summary>${t("workings.caption")} <span class="soft">(${v.workings?size})</span> <@l.unprinted /></summary>
<@l.table caption=t("workings.caption") columns=[t("col.working"), t("col.formula"), t("col.result"), t("col.source")] quiet=true>
<#list v.workings as w>
<@l.row>
<@l.head t("col.working")>${w.meaning}</@l.head>
<@l.cell t("col.formula")><span class="sum"><@l.own w.formula /><br>= <@l.own w.withNumbers /></span><@taken w /></@l.cell>
<@l.cell t("col.result")><b>${w.result}</b></@l.cell>
<@l.cell t("col.source")><@l.origin w.source /></@l.cell>
</@l.row>
</#list>
</@l.table>
</details>
</#if>
<#if v.nearWorkings?has_content>
<details><summary>${t("workings.near")} <span class="soft">(${v.nearWorkings?size})</span> <@l.unprinted /></summary>
<ul><#list v.nearWorkings as w><li>${w.meaning}${t("colon")} ${t("workings.lacking")} <#list w.lacking as k>${k}<#sep>, </#list>.</li></#list></ul>
</details>
</#if>
</@l.section>
</#if>

<@l.section id="entries" title=t("entries.title")>
<p>${t("entries.lead")}</p>
<#list v.entries as g>
<details<#if g.lines?has_content> class="prints"</#if><#if g.open> open</#if>>
<summary>${t(g.heading)} <span class="soft">(${t("entries.count", g.lines?size, g.blank?size)})</span> <@l.unprinted /></summary>
<#if g.lines?has_content>
<@l.table caption=t(g.heading) columns=[t("col.entry"), t("col.written"), t("col.read")] class="entries" quiet=true>
<#list g.lines as e>
<@l.row>
<@l.head t("col.entry")>${e.label}</@l.head>
<@l.cell t("col.written")>${t("quoted", e.written)}</@l.cell>
<@l.cell t("col.read")><#if e.read?has_content>${e.read}<#else>${t("amount.unknown")}</#if><#list e.notes as note><br><b class="note">${note}</b></#list></@l.cell>
</@l.row>
</#list>
</@l.table>
</#if>
<#if g.blank?has_content><p class="blank">${t("entries.blank")} <#list g.blank as b>${b}<#sep>, </#list>.</p></#if>
</details>
</#list>
<#if v.extras?has_content>
<details><summary>${t("extras.title")} <span class="soft">(${v.extras?size})</span> <@l.unprinted /></summary>
<p>${t("extras.lead")}</p>
<dl class="plain"><#list v.extras as x><div><dt>${x.name}</dt><dd>${t("quoted", x.text)}</dd></div></#list></dl>
</details>
</#if>
</@l.section>

<@l.section id="judged" title=t("judged.title")>
<@l.english />
<p><@l.own v.pack.title /> · ${t("judged.edition", v.pack.edition)} · <@l.own v.pack.authority /></p>
<#if v.pack.notice?has_content><p><@l.own v.pack.notice /></p></#if>
<#if v.pack.builtOn?has_content><p>${t("judged.built")} <#list v.pack.builtOn as b>${b}<#sep>, </#list>.</p></#if>
<p>${t("judged.asof", v.asOf)}</p>
</@l.section>
</@l.page>
