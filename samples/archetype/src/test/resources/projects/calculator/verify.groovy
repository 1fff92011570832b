// The bundle was made, and its contract test was run and passed.
def report = new File(basedir, 'project/net.example.walks.lens-cord/target/surefire-reports/TEST-net.example.walks.LensCordContractTest.xml').text
def suite = new groovy.xml.XmlSlurper().parseText(report)
assert suite.@tests.toInteger() > 15
assert suite.@failures == '0' && suite.@errors == '0' && suite.@skipped == '0'
assert new File(basedir, 'project/net.example.walks.lens-cord/target/net.example.walks.lens-cord-0.1.0.jar').file
// It says in German all that it says, with the same places to fill; words of the piece stand in the code in English.
def texts = { name ->
    def found = new Properties()
    new File(basedir, "project/net.example.walks.lens-cord/src/main/resources/net/example/walks/$name").withReader('UTF-8') { found.load(it) }
    return found
}
def english = texts('messages.properties')
def german = texts('messages_de.properties')
assert english.size() > 8
assert german.stringPropertyNames() == english.stringPropertyNames() + []
english.each { key, text ->
    assert german[key].findAll(/\{\d}/).sort() == text.findAll(/\{\d}/).sort()
    assert german[key] != text || key.endsWith('.title')
}
assert german.values().any { it.contains('ä') || it.contains('ö') }
return true
