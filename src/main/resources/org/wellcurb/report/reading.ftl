<#-- How each column was read, and what became of its cells. -->
<#if v.troubles?has_content>
<h3 id="troubles">${t("trouble.title")}</h3>
<p>${t("trouble.lead")}</p>
<@cut "TROUBLES_ON_PAGE" />
<ul><#list v.troubles as trouble><li>${trouble}</li></#list></ul>
</#if>
<#if v.reading?has_content>
<p>${t("reading.columns.lead")}</p>
<@cut "COLUMNS_ON_PAGE" />
<#list v.reading as part>
<details><summary>${part.summary} <@l.unprinted /></summary>
<@l.table caption=part.summary id="columns-" + part?counter list=true quiet=true columns=[t("col.column"), t("reading.entry"), t("reading.given"), t("reading.blank"), t("reading.unknown"), t("reading.na"), t("reading.unreadable"), t("col.note")]>
<#list part.rows as r>
<@l.row>
<@l.head t("col.column")>${r.line.name}</@l.head>
<@l.cell t("reading.entry")>${r.what}<#if r.line.unit?has_content> (${r.line.unit})</#if></@l.cell>
<@l.cell t("reading.given") "number">${r.line.given}</@l.cell>
<@l.cell t("reading.blank") "number">${r.line.blank}</@l.cell>
<@l.cell t("reading.unknown") "number">${r.line.unknown}</@l.cell>
<@l.cell t("reading.na") "number">${r.line.notApplicable}</@l.cell>
<@l.cell t("reading.unreadable") "number">${r.line.unreadable}</@l.cell>
<@l.cell t("col.note")><#if r.line.said?has_content><@l.own r.line.said /> </#if><#list r.notes as note>${note}<#sep> </#list></@l.cell>
</@l.row>
</#list>
</@l.table>
</details>
</#list>
</#if>
