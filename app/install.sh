# Sourced by app/start and tests/check: what the project needs of Debian 12, and how to get it.

build_packages=(
    cmake ninja-build g++ ccache
    qt6-base-dev libqt6opengl6-dev qt6-charts-dev qt6-svg-dev qt6-tools-dev qt6-tools-dev-tools
    qt6-l10n-tools libqt6sql6-sqlite libsqlite3-dev
    libeigen3-dev libcli11-dev libical-dev fonts-dejavu-core
)
test_packages=(
    libgtest-dev libgmock-dev libbenchmark-dev librapidcheck-dev
    xvfb xauth xdotool openbox imagemagick poppler-utils
    chromium chromium-driver
    python3 python3-numpy python3-scipy python3-selenium python3-statsmodels
)

# install_missing WHY PACKAGE...: installs those that are not there; silent when all are.
install_missing() {
    local why=$1 missing=() package as_root=()
    shift
    for package in "$@"; do
        [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null)" = installed ] ||
            missing+=("$package")
    done
    [ ${#missing[@]} -gt 0 ] || return 0
    echo "Installing ${#missing[@]} Debian packages $why: ${missing[*]}"
    if [ "$(id -u)" -ne 0 ]; then
        command -v sudo >/dev/null || {
            echo "Neither root nor sudo: install them as root, then run this again." >&2
            return 1
        }
        as_root=(sudo)
    fi
    local log
    log=$(mktemp)
    if ! { "${as_root[@]}" apt-get update &&
        "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
            apt-get install -y --no-install-recommends "${missing[@]}"; } >"$log" 2>&1; then
        tail -n 20 "$log" >&2
        echo "The packages could not be installed; the whole log is $log." >&2
        return 1
    fi
    rm -f "$log"
}

# build ROOT TREE TARGET... [-- CMAKE_OPTION...]: builds into ROOT/.build/TREE.
build() {
    local root=$1 tree=$2 targets=()
    shift 2
    while [ $# -gt 0 ] && [ "$1" != -- ]; do
        targets+=("$1")
        shift
    done
    [ $# -eq 0 ] || shift
    export CCACHE_BASEDIR=$root
    local log=$root/.build/$tree.log
    mkdir -p "$root/.build"
    if ! { cmake -S "$root" -B "$root/.build/$tree" -G Ninja "$@" &&
        cmake --build "$root/.build/$tree" --target "${targets[@]}"; } >"$log" 2>&1; then
        grep -E -A 8 'error:|CMake Error|FAILED' "$log" | head -n 60 >&2
        echo "The build failed; the whole log is $log." >&2
        return 1
    fi
}
