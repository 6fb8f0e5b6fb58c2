<#import "lib.ftl" as l>
<#assign w = v.view>
<@l.page title=t("notice.title", w.licence) over=v.office?has_content?then(v.office + " · ", "") + t("notice.over") heading=w.licence?has_content?then(t("notice.heading", w.licence), t("notice.heading.none")) under=t("notice.under", w.asOf)>

<p class="lead">${n("notice.lead", w.total, v.records?size)}</p>
<p>${t("notice.how")}</p>
<@l.english />
<#if v.atOnce?has_content>
<@l.section id="at-once" title=t("notice.at_once") class="first">
<p>${t("notice.at_once.lead")}</p>
<ul><#list v.atOnce as a><li><b>${t("sheet.heading", a.id)}${t("colon")}</b> ${a.text} <#if a.numbers?has_content><span class="soft">(${n("notice.points", a.numbers?size, a.numbers?join(", "))})</span></#if></li></#list></ul>
</@l.section>
</#if>
<p class="lead">${t("notice.reply", w.replyBy)}</p>
<#if w.table?has_content><p>${t("notice.table")} <a href="${w.table}">${w.table}</a><#if v.asksSample()>. ${t("notice.table.sample")}</#if></p></#if>
<#if (w.advisories > 0)><p>${n("notice.advisories", w.advisories)}</p></#if>
<#if v.cut?has_content><p class="cut">${v.cut}</p></#if>
<@l.cautions w.cautions />

<#list v.apart as r>
<section aria-labelledby="record-${r?counter}" class="noticed">
<h2 id="record-${r?counter}">${t("sheet.heading", r.id)}</h2>
<p class="under">${r.place}</p>
<#if r.elsewhere?has_content><p class="cut">${r.elsewhere}</p></#if>
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
<#list f.boxes as x><p class="answer"><#if x.ticked><span class="tick"></span><#else><span class="indent"></span></#if>${t(x.key)} <span class="line<#if x.brief> short</#if>"></span></p>
</#list>
</li>
</#list>
</ol>
</section>
</#list>

<#if v.tables?has_content>
<@l.section id="blank" title=t("notice.blank") class="noticed">
<p>${t("notice.blank.lead")}</p>
<#list v.tables as s>
<div class="shared">
<h3>${s.first.sentence} <span class="soft">(${t("kind.short.one." + s.first.kind)})</span></h3>
<dl class="plain">
<div><dt>${t("finding.asked")}${t("colon")}</dt><dd><@l.own s.first.title /></dd></div>
<#if s.first.others?has_content><div><dt>${t("notice.others")}${t("colon")}</dt><dd><#list s.first.others as other>${other}<#sep>, </#list></dd></div></#if>
<div><dt>${t("finding.remedy")}${t("colon")}</dt><dd><@l.own s.first.remedy /></dd></div>
<#if s.first.older?has_content><div><dt>${t("finding.judged")}${t("colon")}</dt><dd>${s.first.older}</dd></div></#if>
<div><dt>${t("finding.source")}${t("colon")}</dt><dd><@l.source s.first.source /></dd></div>
</dl>
<@l.table caption=t("notice.blank") titled=s.first.title quiet=true columns=[t("notice.point"), t("col.record"), t("col.place"), t("notice.blank.given"), t("notice.blank.stands")] class="answers">
<#list s.rows as r>
<@l.row><@l.head t("notice.point")>${r.number}</@l.head><@l.cell t("col.record")>${r.id}</@l.cell><@l.cell t("col.place")>${r.place}</@l.cell><@l.cell t("notice.blank.given")>&#160;</@l.cell><@l.cell t("notice.blank.stands")>&#160;</@l.cell></@l.row>
</#list>
</@l.table>
</div>
</#list>
</@l.section>
</#if>

<@l.section id="sign" title=t("notice.sign")>
<p class="answer">${t("notice.name")} <span class="line"></span></p>
<p class="answer">${t("notice.date")} <span class="line"></span></p>
<#list v.packs as p><p><@l.own p.authority /> · <@l.own p.title /> · ${t("judged.edition", p.edition)}</p></#list>
</@l.section>
</@l.page>
