Wetmil stands under the Apache License 2.0, see LICENSE. Its jar holds these libraries, each under
the licence named after it. The texts that the libraries bring along are in the jar under META-INF;
those that they do not bring along, and are not the Apache License, stand beside this file.
<#list dependencyMap as entry>

${entry.getKey().getName()!} (${entry.getKey().getGroupId()}:${entry.getKey().getArtifactId()} ${entry.getKey().getVersion()})
    ${entry.getValue()?join(", ")}
<#if entry.getKey().getUrl()??>
    ${entry.getKey().getUrl()}
</#if>
</#list>

