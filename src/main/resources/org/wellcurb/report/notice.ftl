<#import "lib.ftl" as l>
<#assign w = v.view>
<@l.page title=t("notice.title", w.licence) over=v.office?has_content?then(v.office + " · ", "") + t("notice.over") heading=w.licence?has_content?then(t("notice.heading", w.licence), t("notice.heading.none")) under=t("notice.under", w.asOf)>

<p class="lead">${n("notice.lead", w.total, v.records?size)}</p>
<p>${t("notice.how")}</p>
<@l.english />
<#if v.atOnce?has_content>
<@l.section id="at-once" title=t("notice.at_once") class="first">
<p>${t("notice.at_once.lead")}</p>
<ul><#list v.atOnce as a><li><b>${t("sheet.heading", a.id)}${t("colon")}</b> ${a.text} <span class="soft">(${n("notice.points", a.numbers?size, a.numbers?join(", "))})</span></li></#list></ul>
</@l.section>
</#if>
<p class="lead">${t("notice.reply", w.replyBy)}</p>
<#if w.table?has_content><p>${t("notice.table")} <a href="${w.table}">${w.table}</a></p></#if>
<#if (w.advisories > 0)><p>${n("notice.advisories", w.advisories)}</p></#if>
<#if v.cut?has_content><p class="cut">${v.cut}</p></#if>
<@l.cautions w.cautions />

<#list v.records as r>
<section aria-labelledby="record-${r?counter}" class="noticed">
<h2 id="record-${r?counter}">${t("sheet.heading", r.id)}</h2>
<p class="under">${r.place}</p>
<ol>
<#list r.lines as f>
<li class="point ${f.kind}" value="${f.number}">
<p><b>${f.sentence}</b> <span class="soft">(${t("kind.short.one." + f.kind)})</span></p>
<dl class="plain">
<div><dt>${t("finding.asked")}${t("colon")}</dt><dd><@l.own f.title /></dd></div>
<#if f.written?has_content><div><dt>${t("notice.written", f.entry)}${t("colon")}</dt><dd class="quoted">${t("quoted", f.written)}</dd></div></#if>
<#if f.others?has_content><div><dt>${t("notice.others")}${t("colon")}</dt><dd><#list f.others as other>${other}<#sep>, </#list></dd></div></#if>
<#if f.reading?has_content><div><dt>${t("finding.reading")}${t("colon")}</dt><dd>${f.reading}</dd></div></#if>
<div><dt>${t("finding.remedy")}${t("colon")}</dt><dd><@l.own f.remedy /></dd></div>
<#if f.older?has_content><div><dt>${t("finding.judged")}${t("colon")}</dt><dd>${f.older}</dd></div></#if>
<div><dt>${t("finding.source")}${t("colon")}</dt><dd><@l.source f.source /></dd></div>
</dl>
<#if f.sample><p class="answer"><span class="tick"></span>${t("notice.sampled")} <span class="line short"></span></p>
<p class="answer"><span class="indent"></span>${t("notice.laboratory")} <span class="line"></span></p>
<#else><p class="answer"><span class="tick"></span><#if f.others?has_content>${t("notice.corrected.which")}<#else>${t("notice.corrected")}</#if> <span class="line"></span></p></#if>
<p class="answer"><span class="tick"></span>${t("notice.explained")} <span class="line"></span></p>
<p class="answer"><span class="tick"></span>${t("notice.done")} <span class="line short"></span></p>
<p class="answer"><span class="indent"></span>${t("notice.result")} <span class="line"></span></p>
</li>
</#list>
</ol>
</section>
</#list>

<@l.section id="sign" title=t("notice.sign")>
<p class="answer">${t("notice.name")} <span class="line"></span></p>
<p class="answer">${t("notice.date")} <span class="line"></span></p>
<#list v.packs as p><p><@l.own p.authority /> · <@l.own p.title /> · ${t("judged.edition", p.edition)}</p></#list>
</@l.section>
</@l.page>
