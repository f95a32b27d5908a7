# Finds a Java 21 or later without starting one. Sourced by ./housewright, ./test and bench/run (POSIX sh).
#
#   find_jdk javac    a JDK, to build with        find_jdk java    any Java, to run with
#
# sets found_home, found_major and found_version, or returns 1. A home given by JAVA_HOME comes first, then the one on the
# PATH, then the newest in the usual folders. The version is read from the "release" file that each Java carries.

wanted_major=21

# java_version_in HOME: sets version ("25.0.3") and major ("25"); returns 1 where no version can be read.
java_version_in() {
    version=
    [ -r "$1/release" ] || return 1
    while IFS='=' read -r key value; do
        if [ "$key" = JAVA_VERSION ]; then
            value=${value#\"}
            version=${value%%\"*}
            break
        fi
    done <"$1/release"
    major=${version%%[!0-9]*}
    [ -n "$major" ] || return 1
}

# newer A B: is version A later than B? Compares up to three numbers; what follows them does not matter here.
newer() {
    rest_a=$1 rest_b=$2
    for place in 1 2 3; do
        a=${rest_a%%[!0-9]*} b=${rest_b%%[!0-9]*}
        [ "${a:-0}" -eq "${b:-0}" ] || { [ "${a:-0}" -gt "${b:-0}" ]; return; }
        rest_a=${rest_a#"$a"} rest_b=${rest_b#"$b"}
        rest_a=${rest_a#.} rest_b=${rest_b#.}
    done
    return 1
}

# take_if_fit HOME TOOL: makes HOME the found one when it is new enough and has the tool.
take_if_fit() {
    java_version_in "$1" || return 1
    if [ "$major" -lt "$wanted_major" ] || [ ! -x "$1/bin/$2" ]; then
        too_old="$too_old
  Java $version in $1"
        [ "$major" -lt "$wanted_major" ] || too_old="$too_old (without $2)"
        return 1
    fi
    found_home=$1 found_major=$major found_version=$version
}

# follow FILE: prints where a chain of symbolic links ends (readlink -f is missing on older macOS).
follow() {
    followed=$1
    while [ -h "$followed" ]; do
        target=$(readlink "$followed")
        case $target in
            /*) followed=$target ;;
            *) followed=${followed%/*}/$target ;;
        esac
    done
    printf '%s\n' "$followed"
}

find_jdk() {
    tool=$1
    found_home= found_major= found_version= too_old=

    if [ -n "${JAVA_HOME:-}" ]; then
        take_if_fit "$JAVA_HOME" "$tool" && return
    fi

    if on_path=$(command -v "$tool"); then
        on_path=$(follow "$on_path")
        home=${on_path%/bin/*}
        take_if_fit "$home" "$tool" && return
    fi

    for home in /usr/lib/jvm/* /usr/java/* /opt/java* /opt/java/* /opt/jdk* /usr/local/openjdk* \
        /Library/Java/JavaVirtualMachines/*/Contents/Home /opt/homebrew/opt/openjdk* /usr/local/opt/openjdk* \
        "${HOME:-/root}"/.sdkman/candidates/java/* "${HOME:-/root}"/.jdks/*; do
        java_version_in "$home" || continue
        [ -z "$found_version" ] || newer "$version" "$found_version" || continue
        take_if_fit "$home" "$tool"
    done
    [ -n "$found_home" ]
}

# Says on stderr what to install; the caller exits.
say_no_jdk() {
    echo "Housewright needs a JDK $wanted_major or later, and found none in JAVA_HOME, on the PATH or in the usual folders." >&2
    if [ -n "$too_old" ]; then
        echo "Found, but of no use:$too_old" >&2
    fi
    cat >&2 <<END
Install one:
  Debian, Ubuntu   apt install openjdk-21-jdk     (or a later openjdk-..-jdk, where 21 is not offered)
  Fedora           dnf install java-21-openjdk-devel
  macOS            brew install openjdk@21
  or any JDK $wanted_major or later, then set JAVA_HOME to its folder.
END
}

# Makes mvn ready to run with the JDK found, or says on stderr what to install and returns 1.
ready_maven() {
    find_jdk javac || { say_no_jdk; return 1; }
    command -v mvn >/dev/null || {
        cat >&2 <<END
Housewright is built with Maven 3.8 or later, and there is no mvn on the PATH.
Install it:
  Debian, Ubuntu   apt install maven
  Fedora           dnf install maven
  macOS            brew install maven
END
        return 1
    }
    export JAVA_HOME="$found_home"
    # Maven's own libraries use what Java 24 and later warn about at length.
    if [ "$found_major" -ge 24 ]; then
        export MAVEN_OPTS="${MAVEN_OPTS:-} --sun-misc-unsafe-memory-access=allow"
    fi
}
