# Read by the scripts beside it: finds a Java that can run Hidewright, and the options it starts with.
# After find_java: java, java_feature (17, 25, …), and the places of the two archives of classes for that Java.

find_java() {
    if [ -n "$JAVA_HOME" ] && [ -x "$JAVA_HOME/bin/java" ]; then
        java=$JAVA_HOME/bin/java
        java_home=$JAVA_HOME
    elif java=$(command -v java); then
        java_home=$(readlink -f "$java")
        java_home=${java_home%/bin/java}
    else
        echo "Hidewright needs Java 17 or newer and found none. Install a JDK 17, or set JAVA_HOME to one." >&2
        return 1
    fi
    java_version=
    if [ -r "$java_home/release" ]; then
        while IFS='=' read -r key value; do
            if [ "$key" = JAVA_VERSION ]; then
                java_version=${value#\"}
                java_version=${java_version%\"}
            fi
        done <"$java_home/release"
    fi
    if [ -z "$java_version" ]; then
        java_version=$("$java" -version 2>&1 | sed -n 's/.*version "\([^"]*\)".*/\1/p')
    fi
    java_feature=${java_version%%[!0-9]*}
    if [ "${java_feature:-0}" -lt 17 ]; then
        echo "Hidewright needs Java 17 or newer and found ${java_version:-an unknown one} in $java_home. Install a JDK 17, or set JAVA_HOME to one." >&2
        return 1
    fi
    path_archive=$home/lib/path-$java_feature.jsa
    bundle_archive=$home/lib/bundles-$java_feature.jsa
}

# run_launcher ARCHIVE-OPTION ARGUMENT…: becomes the launcher's Java. The first argument is the one option by which the
# starts differ: the archive of classes to read, or to write. What each option saves: docs/decisions/0006-start-up.md.
run_launcher() {
    archive_option=$1
    shift
    for launcher in "$home"/lib/org.hidewright.launcher-*.jar; do :; done
    if [ "$java_feature" -ge 24 ]; then
        set -- --enable-native-access=ALL-UNNAMED --sun-misc-unsafe-memory-access=allow "$@"
    fi
    exec "$java" "$archive_option" -XX:TieredStopAtLevel=1 -XX:+UseG1GC -XX:-UsePerfData -Djava.awt.headless=true \
        -Xlog:disable -Xlog:all=error:stderr "-Dhidewright.home=$home" -cp "$launcher" "$@"
}
