<#import "lib.ftl" as l>
<#assign c = v.counts>
<@l.page title=v.pack.title over=t("rulebook.over") heading=v.pack.title under=t("judged.edition", v.pack.edition) isOwn=true>

<p><@l.own v.pack.authority /><#if v.jurisdictions?has_content> · ${t("rulebook.codes")} <#list v.jurisdictions as j>${j}<#sep>, </#list></#if></p>
<#if v.pack.notice?has_content><p class="lead"><@l.own v.pack.notice /></p></#if>
<dl class="counts">
<div><dt>${t("rulebook.count.own")}</dt><dd>${c.rules}</dd></div>
<#if (c.always > 0)><div><dt>${t("rulebook.always")}</dt><dd>${c.always}</dd></div></#if>
<div><dt>${t("rulebook.count.limits")}</dt><dd>${c.limits}</dd></div>
<div><dt>${t("rulebook.count.examples")}</dt><dd>${c.examples}</dd></div>
<div><dt>${t("rulebook.count.taken")}</dt><dd>${c.taken}</dd></div>
</dl>
<p>${t("rulebook.proved", c.proved, c.limits)}</p>
<#if (c.undated > 0)><p>${t("rulebook.undated", c.undated)}</p></#if>
<@l.english />

<nav aria-label="${t("page.parts")}">
<ul class="jump">
<li><a href="#contents">${t("rulebook.contents")}</a> <span class="soft">(${c.rules})</span></li>
<#if (c.always > 0)><li><a href="#always">${t("rulebook.always")}</a> <span class="soft">(${c.always})</span></li></#if>
<#if v.tables?has_content><li><a href="#tables">${t("rulebook.tables")}</a> <span class="soft">(${v.tables?size})</span></li></#if>
<#if v.figures?has_content><li><a href="#figures">${t("rulebook.figures")}</a> <span class="soft">(${v.figures?size})</span></li></#if>
<#if v.taken?has_content || v.drops?has_content><li><a href="#taken">${t("rulebook.taken")}</a> <span class="soft">(${c.taken})</span></li></#if>
<li><a href="#sources">${t("sources.title")}</a> <span class="soft">(${v.sources?size})</span></li>
</ul>
</nav>

<@l.section id="read" title=t("rulebook.read")>
<ul>
<li>${t("rulebook.day", v.judgedBy)}</li>
<li>${t(v.units)}</li>
<li>${t("rulebook.read.blank")}</li>
<li>${t("rulebook.read.na")}<#if v.mustApply?has_content> ${t("rulebook.must")} <#list v.mustApply as m>${m}<#sep>, </#list>.</#if></li>
<li>${t("rulebook.read.range")}</li>
<li>${t("rulebook.read.slack")}</li>
<li>${t(v.waived)}<#if v.waivable?has_content> <#list v.waivable as w><code>${w}</code><#sep>, </#list>.</#if></li>
<li><#list ["deficiency", "discrepancy", "omission", "advisory.any"] as k>${t("kind." + k)}<#sep>${t("semicolon")} </#list>.</li>
</ul>
</@l.section>

<@l.section id="files" title=t("rulebook.files")>
<@l.table caption=t("rulebook.files.caption") columns=[t("rulebook.files.pack"), "SHA-256"]>
<#list v.files as f>
<@l.row><@l.head t("rulebook.files.pack")>${f.pack}</@l.head><@l.cell "SHA-256" "hash">${f.sha256}</@l.cell></@l.row>
</#list>
</@l.table>
</@l.section>

<@l.section id="sign" title=t("rulebook.sign")>
<p>${t("rulebook.sign.what", t("rulebook.contents"), v.pack.edition, v.files[0].sha256?truncate(12, ""))}</p>
<p class="answer">${t("rulebook.sign.name")} <span class="line"></span></p>
<p class="answer">${t("notice.date")} <span class="line short"></span> ${t("rulebook.sign.signature")} <span class="line"></span></p>
</@l.section>

<@l.section id="contents" title=t("rulebook.contents")>
<@l.table caption=t("rulebook.contents.caption") class="contents" columns=[t("rulebook.section"), t("col.rule"), t("rulebook.name"), t("col.kind")]>
<#list v.chapters?filter(g -> g.isWritten()) as g><#list g.rules as r>
<@l.row><@l.cell t("rulebook.section")>${r.section}</@l.cell><@l.head t("col.rule")><a href="#rule-${r.id}"><@l.own r.title /></a></@l.head><@l.cell t("rulebook.name")>${r.id}</@l.cell><@l.cell t("col.kind") "word">${t("kind.short.one." + r.kind)}</@l.cell></@l.row>
</#list></#list>
</@l.table>
</@l.section>

<#list v.chapters as g>
<section aria-labelledby="${g.id}">
<h2 id="${g.id}"><#if g.isOwn()><@l.own g.title /><#else>${g.title}</#if></h2>
<#list g.rules as r>
<article class="rule" id="rule-${r.id}" aria-labelledby="rule-${r.id}-title">
<div class="asks">
<h3 id="rule-${r.id}-title"><#if r.section?has_content><span class="sec">${r.section}</span> </#if><@l.own r.title /></h3>
<p class="under"><b>${t("kind.short.one." + r.kind)}</b> · ${r.id}<#if r.replaces?has_content> · ${t("rulebook.replaces", r.replaces)}<#if r.replacesBecause?has_content>: <@l.own r.replacesBecause /></#if></#if></p>
<#list r.texts as x>
<div class="text">
<#if x.days?has_content><p><b>${x.days}</b></p></#if>
<#if x.sentences?has_content><#list x.sentences as s><p class="sentence">${s}.</p></#list><#else><p class="sentence">${t("outcome.person")} <@l.own r.ask /></p></#if>
<#if x.when?has_content><p>${t("rulebook.when")} ${x.when}.</p></#if>
<#if x.source.text?has_content><p class="soft">${t("finding.source")}${t("colon")} <@l.source x.source /><#if x.noteUnder?has_content> (${t("rulebook.note.under", x.noteUnder)})</#if></p></#if>
</div>
</#list>
<dl class="plain">
<#if r.when?has_content><div><dt>${t("rulebook.when")}</dt><dd>${r.when}.</dd></div></#if>
<#if r.tables?has_content><div><dt>${t("rulebook.table")}</dt><dd><#list r.tables as x><#assign titles = v.tables?filter(k -> k.name == x && k.title?has_content)><a href="#table-${x}"><#if titles?has_content><@l.own titles[0].title /><#else>${x}</#if></a><#sep>, </#list></dd></div></#if>
<#if r.judgedBy?has_content><div><dt>${t("rulebook.ownday")}</dt><dd>${r.judgedBy}.</dd></div></#if>
<#if r.subject?has_content><div><dt>${t("rulebook.subject")}</dt><dd>${r.subject}</dd></div></#if>
<div><dt>${t("finding.because")}${t("colon")}</dt><dd><@l.own r.because /></dd></div>
<div><dt>${t("finding.remedy")}${t("colon")}</dt><dd><@l.own r.remedy /></dd></div>
<#if r.atOnce?has_content><div><dt>${t("finding.at_once")}${t("colon")}</dt><dd><@l.own r.atOnce /></dd></div></#if>
</dl>
</div>
<#if r.examples?has_content>
<p class="examples"><b>${t("rulebook.examples")}</b> <span class="soft">(${r.examples?size})</span></p>
<ul class="examples"><#list r.examples as e><li><b>${t(e.expect)}</b>${t("colon")} <#list e.given as given>${given}<#sep>${t("semicolon")} </#list></li></#list></ul>
</#if>
</article>
</#list>
</section>
</#list>

<#if v.tables?has_content>
<@l.section id="tables" title=t("rulebook.tables")>
<p>${t("rulebook.first")}</p>
<#list v.tables as x>
<div id="table-${x.name}">
<@l.table caption=x.name titled=x.title columns=x.by + [t("rulebook.limit")]>
<#list x.rows as row>
<@l.row><#list row as text><@l.cell (x.by + [t("rulebook.limit")])[text?index]>${text}</@l.cell></#list></@l.row>
</#list>
</@l.table>
<#if x.lacks?has_content><p>${t("rulebook.lacks")}</p>
<ul><#list x.lacks as k><li>${k}.</li></#list></ul></#if>
<#if x.source.text?has_content><p class="soft">${t("finding.source")}${t("colon")} <@l.source x.source /></p></#if>
</div>
</#list>
</@l.section>
</#if>

<#if v.figures?has_content>
<@l.section id="figures" title=t("rulebook.figures")>
<p>${t("rulebook.figures.how")}</p>
<ul><#list v.figures as f><li>${f}</li></#list></ul>
</@l.section>
</#if>

<#if v.taken?has_content || v.drops?has_content>
<@l.section id="taken" title=t("rulebook.taken")>
<p>${t("judged.built")} <#list v.pack.builtOn as b>${b}<#sep>, </#list>. ${t("rulebook.taken.how")}</p>
<#if v.replaced?has_content || v.drops?has_content>
<@l.table caption=t("rulebook.replaced.caption") columns=[t("col.rule"), t("rulebook.what"), t("rulebook.why")]>
<#list v.replaced as r>
<@l.row><@l.head t("col.rule")><a href="#rule-${r.id}"><@l.own r.title /></a> <span class="soft">(${r.id})</span></@l.head><@l.cell t("rulebook.what")>${t("rulebook.replaced.word")}${t("colon")} ${t("rulebook.of", r.replaces)}</@l.cell><@l.cell t("rulebook.why")><#if r.replacesBecause?has_content><@l.own r.replacesBecause /><#else>${t("rulebook.unsaid")}</#if></@l.cell></@l.row>
</#list>
<#list v.drops as d>
<@l.row><@l.head t("col.rule")><#if d.title?has_content><@l.own d.title /> </#if><span class="soft">(${d.rule})</span></@l.head><@l.cell t("rulebook.what")>${t("rulebook.dropped.word")}${t("colon")} ${t("rulebook.by", d.pack)}</@l.cell><@l.cell t("rulebook.why")><@l.own d.because /></@l.cell></@l.row>
</#list>
</@l.table>
</#if>
<#list v.taken as k>
<@l.table caption=t("rulebook.taken.from", k.pack, t(k.heading)) class="taken" columns=[t("col.rule"), t("col.kind"), t("rulebook.asks")]>
<#list k.rules as r>
<@l.row><@l.head t("col.rule")><@l.own r.title /> <span class="soft">(${r.id})</span></@l.head><@l.cell t("col.kind") "word">${t("kind.short.one." + r.kind)}</@l.cell><@l.cell t("rulebook.asks")>${r.asks}</@l.cell></@l.row>
</#list>
</@l.table>
</#list>
</@l.section>
</#if>

<@l.section id="sources" title=t("sources.title")>
<@l.table caption=t("rulebook.sources") class="books" columns=[t("rulebook.name"), t("col.source"), t("rulebook.rules")] quiet=true>
<#list v.sources as s>
<@l.row><@l.head t("rulebook.name")>${s.id}</@l.head><@l.cell t("col.source")><@l.source s.line /></@l.cell><@l.cell t("rulebook.rules") "number">${s.rules}</@l.cell></@l.row>
</#list>
</@l.table>
</@l.section>
</@l.page>
