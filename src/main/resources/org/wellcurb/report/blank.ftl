<#import "lib.ftl" as l>
<@l.page title=t("blank.title") over=t("blank.over") heading=t("blank.title")>
<p>${t("blank.lead")} <#if v.system == "us">${t("blank.system.us")}<#elseif v.system == "metric">${t("blank.system.metric")}<#else>${t("blank.ring")}</#if></p>
<#list v.groups as g>
<@l.section id=g.heading?replace(".", "-") title=t(g.heading) class="form">
<ul class="fields">
<#list g.fields as f>
<li<#if f.values?has_content && f.values[0] == "yes"> class="short"</#if>><span class="label">${f.label}</span> <#if f.choices?has_content><span class="choices"><#list f.choices as c><span class="choice"><#if f.key == "record.units" && f.values[c?index] == v.system><span class="tick ticked">×</span><#else><span class="tick"></span></#if>${c}</span> </#list></span><#else><span class="fill"><span class="box ${f.room}"></span><#if f.units?has_content> <span class="unit"><#list f.units as u>${u}<#sep> | </#list></span></#if></span></#if></li>
</#list>
</ul>
</@l.section>
<#if g.heading == "group.bore">
<@l.section id="log" title=t("blank.layers") class="form">
<table class="log"><caption class="unseen">${t("blank.layers")}</caption>
<thead><tr><th scope="col">${t("blank.from")}</th><th scope="col">${t("blank.to")}</th><th scope="col">${t("blank.material")}</th></tr></thead>
<tbody><#list 1..12 as i><tr><td>&nbsp;</td><td></td><td></td></tr></#list></tbody></table>
</@l.section>
</#if>
</#list>
<@l.section id="signed" title=t("blank.signed") class="form">
<p class="answer">${t("notice.name")} <span class="line"></span></p>
<p class="answer">${t("blank.signature")} <span class="line"></span> ${t("notice.date")} <span class="line short"></span> <span class="unit">${t("blank.date")}</span></p>
</@l.section>
</@l.page>
