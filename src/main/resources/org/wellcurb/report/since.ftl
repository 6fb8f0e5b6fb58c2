<#import "lib.ftl" as l>
<#assign w = v.view>
<@l.page title=t("since.title") over=t("since.over") heading=t("since.heading", w.counts.added, w.counts.cleared, w.counts.untold) under=t("since.under", w.asOf, w.earlierAsOf)>

<dl class="counts in-threes">
<#list v.counts as key, count><div><dt>${t(key)}</dt><dd>${count}</dd></div></#list>
</dl>
<p>${t("since.lead")}</p>
<#if v.why?has_content><p>${t("since.why")}</p><ul><#list v.why as line><li>${line}</li></#list></ul></#if>
<#if v.told?has_content><p>${t("since.told")}</p><ul><#list v.told as line><li>${line}</li></#list></ul></#if>

<#macro groups id caption column lines none own=false>
<#if lines?has_content>
<@l.table caption=caption id=id list=true columns=[column, t("since.added"), t("since.new_record"), t("since.still"), t("since.cleared"), t("since.void"), t("since.untold"), t("since.judged.short"), t("since.judged.clear"), t("since.gone")]>
<#list lines as g>
<@l.row><@l.head column><#if g.name?has_content><#if own><@l.own g.name /><#else>${g.name}</#if><#if g.apart?has_content> (${g.apart})</#if><#else>${none}</#if></@l.head><@l.cell t("since.added") "number">${g.counts.added}</@l.cell><@l.cell t("since.new_record") "number">${g.counts.ofNewRecords}</@l.cell><@l.cell t("since.still") "number">${g.counts.still}</@l.cell><@l.cell t("since.cleared") "number">${g.counts.cleared}</@l.cell><@l.cell t("since.void") "number">${g.counts.saidVoid}</@l.cell><@l.cell t("since.untold") "number">${g.counts.untold}</@l.cell><@l.cell t("since.judged.short") "number">${g.counts.judgedShort}</@l.cell><@l.cell t("since.judged.clear") "number">${g.counts.judgedClear}</@l.cell><@l.cell t("since.gone") "number">${g.counts.gone}</@l.cell></@l.row>
</#list>
</@l.table>
</#if>
</#macro>
<@l.section id="by" title=t("since.by")>
<@groups "list-contractors" t("since.contractors") t("col.licence") w.contractors t("contractors.none") />
<@groups "list-rules" t("since.rules") t("col.rule") w.rules "" true />
</@l.section>

<#if w.changes?has_content>
<@l.section id="changes" title=t("since.changes")>
<#if v.cut?has_content><p class="cut">${v.cut}</p></#if>
<@l.table caption=t("since.changes.caption") id="list-changes" list=true quiet=true columns=[t("col.record"), t("since.change"), t("col.rule"), t("col.licence"), t("col.place")]>
<#list v.changes as c>
<@l.row><@l.head t("col.record")>${c.record}</@l.head><@l.cell t("since.change")>${c.change}</@l.cell><@l.cell t("col.rule")><@l.own c.title /></@l.cell><@l.cell t("col.licence")>${c.licence}</@l.cell><@l.cell t("col.place")>${c.place}</@l.cell></@l.row>
</#list>
</@l.table>
</@l.section>
</#if>
</@l.page>
