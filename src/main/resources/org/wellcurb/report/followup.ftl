<#-- What the run was told beside the records. -->
<#if !b.followUp.empty>
<#assign f = b.followUp>
<@l.section id="followup" title=t("followup.title")>
<#if f.since?? || (f.settled > 0) || (f.corrections > 0)>
<ul>
<#if f.since??><li>${t("followup.since", f.since.added, f.since.still, f.since.cleared, f.since.untold, f.since.ofNewRecords, f.since.judgedShort, f.since.judgedClear, f.since.gone, f.since.saidVoid)} <a href="since.html">${t("followup.since.link")}</a></li></#if>
<#if (f.settled > 0)><li>${n("followup.settled", f.settled)}</li></#if>
<#if (f.corrections > 0)><li>${n("followup.answers", f.corrections, f.correctedRecords)}</li></#if>
</ul>
</#if>
<#if f.corrected?has_content>
<details<#if (f.corrected?size <= 10)> open</#if>><summary>${n("followup.corrected", f.corrections)} <@l.unprinted /></summary>
<ul><#list f.corrected as s><li>${t("followup.line", s.line)} ${t("followup.corrected.line", s.recordId, s.entry, s.from?has_content?then(t("quoted", s.from), t("followup.corrected.blank")), t("quoted", s.to))}</li></#list></ul></details>
</#if>
<#if f.settledUnmatched?has_content>
<p class="cut">${n("followup.settled.unmatched", f.settledUnmatchedTotal)}</p>
<ul><#list f.settledUnmatched as s><li>${t("followup.line", s.line)} ${s.recordId}, ${s.rule}</li></#list></ul>
</#if>
<#if f.settledOtherwise?has_content>
<p class="cut">${n("followup.settled.otherwise", f.settledOtherwiseTotal)}</p>
<ul><#list f.settledOtherwise as s><li>${t("followup.line", s.settlement.line)} ${t("followup.corrected.line", s.settlement.recordId, s.settlement.rule, t("quoted", s.settlement.written), s.now?has_content?then(t("quoted", s.now), t("followup.corrected.blank")))}</li></#list></ul>
</#if>
<#if f.answersUnmatched?has_content>
<p class="cut">${n("followup.answers.unmatched", f.answersUnmatchedTotal)}</p>
<ul><#list f.answersUnmatched as s><li>${t("followup.line", s)}</li></#list></ul>
</#if>
<#if f.refused?has_content>
<p class="cut">${n("followup.refused", f.refusedTotal)}</p>
<ul><#list f.refused as s><li>${s.place}${t("colon")} ${t(s.why.key())} (${s.what})</li></#list></ul>
</#if>
<#if f.saidVoid?has_content>
<p class="cut">${n("followup.void", f.saidVoidTotal)} <a href="explained.csv">explained.csv</a></p>
<ul><#list f.saidVoid as s><li>${t("followup.line", s.line)} ${s.recordId}, ${s.entry}<#if s.rule?has_content> (${s.rule})</#if>${t("colon")} ${t("quoted", s.corrected)}<#if s.text?has_content> ${t("quoted", s.text)}</#if></li></#list></ul>
</#if>
<#if f.explained?has_content>
<p>${n("followup.explained", f.explainedTotal)} <a href="explained.csv">explained.csv</a></p>
<details<#if (f.explained?size <= 10)> open</#if>><summary>${t("followup.explained.list")} <@l.unprinted /></summary>
<ul><#list f.explained as s><li>${t("followup.line", s.line)} ${s.recordId}, ${s.rule}${t("colon")} ${t("quoted", s.text)}<#if s.corrected?has_content> ${t("followup.explained.corrected", s.corrected)}</#if><#if !s.isHere()> <span class="soft">${t("followup.explained.elsewhere")}</span></#if></li></#list></ul></details>
</#if>
<#if f.idleVariances?has_content>
<p class="cut">${n("followup.variances", f.idleVariancesTotal, f.unknownVariances)}</p>
<ul><#list f.idleVariances as s><li>${s.record}, ${s.rule}<#if s.reference?has_content>${t("colon")} ${s.reference}</#if>. ${t(s.why())}<#if s.near?has_content> ${t("variance.near", s.near)}</#if></li></#list></ul>
</#if>
<@cut "SIDE_LINES_ON_PAGE" />
</@l.section>
</#if>
