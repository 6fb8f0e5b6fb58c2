<#-- What only the whole batch shows. -->
<#if v.cross??>
<@l.section id="cross" title=t("cross.title")>
<p>${t("cross.lead")}</p>
<#if !v.cross.parts?has_content><p>${t("cross.nothing")}</p></#if>
<#list v.cross.parts as c>
<h3>${c.title}</h3>
<p class="soft">${c.lead}</p>
<#if c.more?has_content><details><summary>${t("cross.more.how")} <@l.unprinted /></summary><p class="soft">${c.more}</p></details></#if>
<#if c.cut?has_content><p class="cut">${c.cut}</p></#if>
<ul><#list c.sentences as s><li>${s}</li></#list></ul>
</#list>
<#if v.cross.tables?has_content>
<h3>${t("cross.rates")}</h3>
<p class="soft">${t("cross.rates.lead")}</p>
<#list v.cross.tables as table>
<@l.table caption=table.title id=table.id list=true columns=[table.column, t("col.share"), t("cross.rates.said")]>
<#list table.rows as r>
<@l.row><@l.head table.column>${r.name}</@l.head><@l.cell t("col.share")>${svg(r.bar)}${r.rate}</@l.cell><@l.cell t("cross.rates.said")>${r.said}</@l.cell></@l.row>
</#list>
</@l.table>
</#list>
</#if>
</@l.section>
</#if>
