<#import "lib.ftl" as l>
<!DOCTYPE html>
<html lang="${lang}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; connect-src 'self'; style-src ${cssHash} ${deskCssHash}; script-src ${jsHash} ${deskJsHash}; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="icon" href="data:,">
<title>${t("desk.title")}</title>
<style>${css}</style>
<style>${deskCss}</style>
</head>
<body>
<a class="skip" href="#sheet">${t("page.skip")}</a>
<header class="top">
<p class="over">${t("desk.over")}</p>
<h1>${t("desk.title")}</h1>
<p class="under">${t("desk.judged")} <#list v.packs as p><@l.own p.title /> (${p.edition})<#sep>${t("semicolon")} </#list></p>
</header>
<main id="main" data-token="${v.token}" data-waiting="${t("desk.waiting")}" data-said="${t("desk.said", "#", "##")}" data-unnumbered="${t("desk.unnumbered")}" data-lost="${t("desk.lost")}" data-stale="${t("desk.stale")}" data-layer="${t("desk.layer", "#")}" data-notes="${t("desk.group.notes", "#")}" data-most="${v.most}" data-large="${t("desk.large", "#", v.mebibytes)}" data-unsaved="${t("desk.unsaved")}" data-saved="${t("desk.saved", "#")}" data-reading="${t("desk.reading", "#")}" data-one="${t("desk.one", "#", "##")}" data-replaced="${t("desk.replaced", "#")}" data-changed="${t("desk.changed", "#")}" data-entry="${t("desk.entry", "#")}" data-read="${t("desk.read", "#")}" data-open="${t("desk.all")}" data-close="${t("desk.all.close")}" data-missed="${t("desk.find.none", "#")}">
<div class="tools">
<label class="open">${t("desk.open")} <input type="file" id="file" accept=".json,.ndjson,.jsonl,.csv,.tsv,.txt,.xlsx"></label>
<label id="which-label" hidden>${t("desk.which")} <select id="which"></select></label>
<button type="button" id="save">${t("desk.save")}</button>
<button type="button" id="print">${t("desk.print")}</button>
<button type="button" id="clear">${t("desk.clear")}</button>
<button type="button" id="back" hidden>${t("desk.back")}</button>
</div>
<noscript><p class="cut">${t("desk.noscript")}</p></noscript>
<p id="note" class="cut" role="status" hidden></p>
<div class="said"><p id="status" role="status">${t("desk.waiting")}</p><p id="working" hidden>${t("desk.working")}</p><p id="bare" role="status"></p><p id="kept"></p><a href="#sheet">${t("desk.go")}</a></div>
<div class="desk">
<section aria-labelledby="form-heading">
<h2 id="form-heading">${t("desk.form")}</h2>
<p>${t("desk.lead")}</p>
<form id="form" autocomplete="off">
<#list v.groups as g><#list g.fields as f><#if f.key == "record.units">
<p class="chosen"><label for="record-units">${f.label}</label>
<select id="record-units" name="record.units" aria-describedby="record-units-note"><option value="">${t("desk.units.none")}</option><#list f.values as value><option value="${value}">${f.choices[value?index]}</option></#list></select><span class="beside-it" id="record-units-note"></span></p>
</#if></#list></#list>
<p class="tools"><label for="find">${t("desk.find")}</label> <input type="text" id="find" list="find-all"><datalist id="find-all"></datalist> <button type="button" id="find-go">${t("desk.find.go")}</button> <button type="button" id="all">${t("desk.all")}</button></p>
<#list v.groups as g>
<details<#if g?index == 0> open</#if>>
<summary>${t(g.heading)} <span class="many"></span></summary>
<div class="entries-in">
<#list g.fields as f><#if f.key != "record.units">
<#assign id = f.key?replace(".", "-")>
<p><label for="${id}">${f.label}</label>
<#if f.values?has_content><select id="${id}" name="${f.key}" aria-describedby="${id}-note"><option value="">${t("desk.blank")}</option><#list f.values as value><option value="${value}">${f.choices[value?index]}</option></#list><#if !f.values?seq_contains("n/a")><option value="n/a">${t("desk.na")}</option></#if></select>
<#else><input type="text" id="${id}" name="${f.key}"<#if v.known[f.key]??> list="${id}-known"</#if><#if !f.wide && !f.key?starts_with("dates.")> data-number</#if><#if f.units?has_content> class="amount" aria-describedby="${id}-unit ${id}-note"<#else> aria-describedby="${id}-note"</#if>><#if f.units?has_content> <span class="unit" id="${id}-unit" data-units="${f.units?join("|")}"><#list f.units as u>${u}<#sep> | </#list></span></#if><#if v.known[f.key]??><datalist id="${id}-known"><#list v.known[f.key] as word><option value="${word}"></option></#list></datalist></#if></#if><span class="beside-it" id="${id}-note"></span></p>
</#if></#list>
<#if g.heading == "group.bore">
<fieldset id="layers"><legend>${t("desk.layers")}</legend>
<div id="layer-rows"></div>
<button type="button" id="layer-more">${t("desk.layer.more")}</button>
<template id="layer-row"><p class="layer"><span></span> <label>${t("blank.from")} <input type="text" data-part="from" data-number></label> <label>${t("blank.to")} <input type="text" data-part="to" data-number></label> <label>${t("blank.material")} <input type="text" data-part="material"></label></p></template>
</fieldset>
</#if>
</div>
</details>
</#list>
</form>
</section>
<section aria-labelledby="sheet-heading" class="beside" id="beside">
<h2 id="sheet-heading">${t("desk.sheet")}</h2>
<iframe id="sheet" title="${t("desk.sheet.title")}" tabindex="0"></iframe>
</section>
</div>
</main>
<footer class="bottom">
<p class="always">${t("caution.always")}</p>
</footer>
<script>${deskJs}</script>
</body>
</html>
