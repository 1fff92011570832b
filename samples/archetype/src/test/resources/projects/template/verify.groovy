// The bundle was made, and its contract test was run and passed.
def report = new File(basedir, 'project/com.example.herbar.jar-tag-2/target/surefire-reports/TEST-com.example.herbar.JarTag2ContractTest.xml').text
def suite = new groovy.xml.XmlSlurper().parseText(report)
assert suite.@tests.toInteger() > 15
assert suite.@failures == '0' && suite.@errors == '0' && suite.@skipped == '0'
assert new File(basedir, 'project/com.example.herbar.jar-tag-2/target/com.example.herbar.jar-tag-2-0.1.0.jar').file
// It says in German all that it says, with the same places to fill; words of the piece stand in the code in English.
def texts = { name ->
    def found = new Properties()
    new File(basedir, "project/com.example.herbar.jar-tag-2/src/main/resources/com/example/herbar/$name").withReader('UTF-8') { found.load(it) }
    return found
}
def english = texts('messages.properties')
def german = texts('messages_de.properties')
assert english.size() > 8
assert german.stringPropertyNames() == english.stringPropertyNames() + ['item.part.body', 'item.step.edges']
english.each { key, text ->
    assert german[key].findAll(/\{\d}/).sort() == text.findAll(/\{\d}/).sort()
    assert german[key] != text || key.endsWith('.title')
}
assert german.values().any { it.contains('ä') || it.contains('ö') }
return true
