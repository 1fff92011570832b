// The bundle was made, and its contract test was run and passed.
def report = new File(basedir, 'project/com.example.herbar.jar-tag-2/target/surefire-reports/TEST-com.example.herbar.JarTag2ContractTest.xml').text
def suite = new groovy.xml.XmlSlurper().parseText(report)
assert suite.@tests.toInteger() > 15
assert suite.@failures == '0' && suite.@errors == '0' && suite.@skipped == '0'
assert new File(basedir, 'project/com.example.herbar.jar-tag-2/target/com.example.herbar.jar-tag-2-0.1.0.jar').file
return true
