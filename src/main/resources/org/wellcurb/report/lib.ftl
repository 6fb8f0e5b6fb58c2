<#-- What all pages share. Everything printed is escaped, but our own style, script and drawings. -->
<#-- What stands within another page may not bring a style of its own: that page lets none in. -->
<#macro page title over heading under="" isOwn=false isWithin=false>
<#local foot = running(title)>
<!DOCTYPE html>
<html lang="${lang}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src ${cssHash}<#if !isWithin> ${foot.hash}</#if>; script-src ${jsHash}; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${css}</style>
<#if !isWithin>
<style>${foot.css}</style>
</#if>
</head>
<body>
<a class="skip" href="#main">${t("page.skip")}</a>
<header class="top" aria-labelledby="page-name">
<p class="over">${over}<#if index?has_content> · <a href="${index}">${t("page.index")}</a></#if></p>
<h1 id="page-name"><#if isOwn><@own heading /><#else>${heading}</#if></h1>
<#if under?has_content><p class="under">${under}</p></#if>
</header>
<#local inside><#nested></#local>
<main id="main" aria-labelledby="page-name">
${inside}
</main>
<footer class="bottom" aria-labelledby="page-name">
<p class="always">${t("caution.always")}</p>
<#-- A gallon may be imperial, a fifth more, on forms of Canada. -->
<#if inGallons(inside?markup_string)><p>${t("units.gallon")}</p></#if>
<p>${t("page.made")}</p>
</footer>
<script>${js}</script>
</body>
</html>
</#macro>

<#-- Words of a pack or of a computed sentence: in the language of the page where they are there. -->
<#macro own text><#if lang == "en">${text}<#else><#local said = o(text)><#if said?has_content>${said}<#else><span lang="en">${text}</span></#if></#if></#macro>

<#-- Where a sum comes from: the words for what has no text, or was not read in one, are ours. -->
<#macro origin text>
<#if text == "common practice">${t("basis.common_practice")}<#elseif text?ends_with(" (from memory)")><@origin text?remove_ending(" (from memory)") /> (${t("source.memory")})<#elseif text?starts_with("common practice: ")>${t("source.practice")} <@own text?remove_beginning("common practice: ") /><#else><@own text /></#if></#macro>

<#-- On a page in another language, that the texts of a pack are not. -->
<#macro english><#if lang != "en"><p class="soft">${t("page.own")}</p></#if></#macro>

<#macro source s>
<#if s.text == t("basis.common_practice")>${s.text}<#else><@own s.text /></#if><#if s.address?has_content> <a href="${s.address}" rel="noreferrer">${t("source.read")}</a></#if><#if s.note?has_content> <span class="soft">(<@own s.note />)</span></#if></#macro>

<#macro section id title class="">
<section aria-labelledby="${id}"<#if class?has_content> class="${class}"</#if>>
<h2 id="${id}">${title}</h2>
<#nested>
</section>
</#macro>

<#-- A table whose rows stack on a narrow screen; its roles hold where the layout changes. -->
<#macro table caption columns id="" class="" list=false quiet=false titled="">
<table role="table" class="stack ${class}"<#if id?has_content> id="${id}"</#if><#if list> data-list data-filter="${t("list.filter")}" data-sort="${t("list.sort")}" data-given="${t("list.sort.given")}" data-turn="${t("list.turn")}" data-shown="${t("list.shown", "#", "##")}" data-nothing="${t("list.nothing", "#")}" data-before="${t("list.before")}" data-after="${t("list.after")}" data-all="${t("list.all")}"</#if>>
<caption<#if quiet> class="unseen"</#if>><#if titled?has_content><@own titled /> (</#if>${caption}<#if titled?has_content>)</#if></caption>
<thead role="rowgroup"><tr role="row"><#list columns as column><th role="columnheader" scope="col">${column}</th></#list></tr></thead>
<tbody role="rowgroup">
<#nested>
</tbody>
</table>
</#macro>

<#macro row><tr role="row"><#nested></tr></#macro>
<#macro head label class=""><th role="rowheader" scope="row" data-l="${label}"<#if class?has_content> class="${class}"</#if>><#nested></th></#macro>
<#macro cell label class="" sort=""><td role="cell" data-l="${label}"<#if class?has_content> class="${class}"</#if><#if sort?has_content> data-sort="${sort}"</#if>><span><#nested></span></td></#macro>

<#macro cautions keys>
<#-- The caution for every page stands in the footer. -->
<#local some = keys?filter(key -> key != "always")>
<#if some?has_content>
<@section id="care" title=t("care.title") class="care">
<ul><#list some as key><li>${t("caution." + key)}</li></#list></ul>
</@section>
</#if>
</#macro>

<#-- Stands in the summary of what may be closed: a printed page says so of what it leaves out. -->
<#macro unprinted><span class="unprinted">${t("page.unprinted")}</span></#macro>

<#-- Findings that a step says whole; of the others it gives the letters. -->
<#assign stepFindings = 6>
<#macro lettered f><a class="to-finding" href="#${f.anchor}" aria-label="${t("finding.letter", f.letter)}">${f.letter}</a></#macro>

<#macro steps steps>
<@section id="first" title=t("first.title") class="first">
<ol>
<#list steps as step>
<li><#if step.link?has_content><a href="${step.link}">${step.text}</a><#else>${step.text}</#if><#list step.quoted as x> <@own x /><#sep>${t("semicolon")}</#sep></#list><#if step.records?has_content>
<#-- Records of which the same is to be said share a line. -->
<ul class="todo"><#list step.records as r><#if r?is_first || step.records[r?index - 1].first != r.first><li><#else>, </#if><#if r.sheet?has_content><a href="${r.sheet}">${r.recordId}</a><#else>${r.recordId}</#if><#if r?is_last || step.records[r?index + 1].first != r.first>${t("colon")} ${r.first}</li></#if></#list></ul></#if><#if step.findings?has_content>
<ul class="todo"><#list step.findings as f><#if f?index lt stepFindings><li><@lettered f /> ${f.sentence}<#if step.now> <b><@own f.remedy /></b> <span class="soft">– ${t("step.asked", f.whose)}</span></#if></li></#if></#list></ul>
<#if step.findings?size gt stepFindings><p class="letters">${t("first.also")}<#list step.findings as f><#if f?index gte stepFindings> <@lettered f /></#if></#list></p></#if></#if></li>
</#list>
</ol>
</@section>
</#macro>

<#macro drawing d>
<figure id="${d.id}">
<figcaption>${d.title}</figcaption>
${svg(d.svg)}
<#if d.marks?has_content>
<ul class="marks"><#list d.marks as m><li><a href="#${m.anchor}"><b>${m.letter}</b> ${m.sentence}</a></li></#list></ul>
</#if>
<#if d.legend?has_content><ul class="legend"><#list d.legend as s><li<#if s.svg?has_content> class="signed"</#if>><#if s.svg?has_content>${svg(s.svg)}</#if><span>${set(s.text)}</span></li></#list></ul></#if>
<details><summary>${t("drawing.words")}</summary><ul><#list d.words as line><li>${set(line)}</li></#list><#list d.marks as m><li>${t("drawing.letter", m.letter, m.sentence)}</li></#list></ul></details>
</figure>
</#macro>
