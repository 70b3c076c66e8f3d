# Sourced by run.sh of app and tests: install_packages STAMP LIST...
# Installs the packages named in the lists that are missing. The stamp is newer than every list once that is done, so
# that later runs lose no time. Talk goes to standard error.
install_packages() {
    local stamp=$1 list fresh=1
    shift
    for list in "$@"; do
        [ "$stamp" -nt "$list" ] || fresh=0
    done
    [ "$fresh" = 1 ] && return 0
    local wanted missing
    wanted=$(sed -e 's/#.*//' "$@" | sort -u)
    if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
        echo "lathhouse: this system has no apt; make sure that these are installed (names as in Debian 12):" $wanted >&2
        return 0
    fi
    missing=$(for package in $wanted; do
        dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || echo "$package"
    done)
    if [ -n "$missing" ]; then
        local sudo=
        if [ "$(id -u)" != 0 ]; then
            sudo=$(command -v sudo) || {
                echo "lathhouse: ask an administrator to run: apt-get install" $missing >&2
                return 1
            }
        fi
        echo "lathhouse: installing" $missing >&2
        $sudo apt-get -q update >&2 || true
        $sudo env DEBIAN_FRONTEND=noninteractive apt-get install -qy --no-install-recommends \
            -o DPkg::Lock::Timeout=300 $missing >&2 || {
            echo "lathhouse: the packages above could not be installed; see the lines before" >&2
            return 1
        }
    fi
    mkdir -p "$(dirname "$stamp")" && touch "$stamp"
}
