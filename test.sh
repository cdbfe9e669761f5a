#!/usr/bin/env bash
# Builds everything and runs every test. Needs the .NET 10 SDK; what else the tests need is installed with apt-get where it is missing.
#   ./test.sh              everything, and the check of the code's form
#   ./test.sh Core Files   only these test projects
# The last line is "N passed, N failed, N skipped"; the exit code is 0 only when nothing failed.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
reports=artifacts/test-reports
passed=0 failed=0 skipped=0
rows=()

usage() {
    sed -n '2,5s/^# \{0,1\}//p' "$0"
    printf 'Projects:'
    for project in tests/Scrapwright.*.Tests; do
        printf ' %s' "$(short_name "$project")"
    done
    printf '\n'
}

short_name() {
    local name=${1##*/Scrapwright.}
    printf '%s' "${name%.Tests}"
}

as_root() {
    if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}

# The tests of the screens drive a browser: the one that CHROMIUM names, else one on the path.
need_browser() {
    if [ -n "${CHROMIUM:-}" ]; then return; fi
    local name
    for name in chromium chromium-browser google-chrome; do
        if command -v "$name" > /dev/null; then return; fi
    done
    echo "No Chromium found; installing it."
    if ! command -v apt-get > /dev/null; then
        echo "There is no apt-get here. Please install Chromium, or set CHROMIUM to its path." >&2
        return 1
    fi
    as_root apt-get update
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install --yes --no-install-recommends chromium
}

# Adds one line to the table: name, passed, failed, skipped, note.
add_row() {
    rows+=("$(printf '%-14s %8s %8s %8s  %s' "$1" "$2" "$3" "$4" "$5")")
    passed=$((passed + $2)) failed=$((failed + $3)) skipped=$((skipped + $4))
}

# The number an attribute has in the report's <assembly> elements, summed.
attribute_sum() {
    local sum=0 number
    for number in $(grep -o '<assembly [^>]*>' "$2" | grep -o " $1=\"[0-9]*\"" | grep -o '[0-9]*' || true); do
        sum=$((sum + number))
    done
    printf '%s' "$sum"
}

run_project() {
    local name=$1 program report output code=0
    program=artifacts/bin/Scrapwright.$name.Tests/debug/Scrapwright.$name.Tests
    report=$reports/$name.xml
    output=$reports/$name.txt
    echo "== $name"
    if [ ! -x "$program" ]; then
        add_row "$name" 0 1 0 "was not built"
        return
    fi
    "$program" --no-ansi --progress off --results-directory "$PWD/$reports" --report-xunit-xml --report-xunit-xml-filename "$name.xml" \
        > "$output" 2>&1 || code=$?
    if [ ! -s "$report" ]; then
        cat "$output"
        add_row "$name" 0 1 0 "crashed with exit code $code, see $output"
        return
    fi
    local total good bad not_run note=
    total=$(attribute_sum total "$report")
    good=$(attribute_sum passed "$report")
    bad=$(($(attribute_sum failed "$report") + $(attribute_sum errors "$report")))
    not_run=$(attribute_sum skipped "$report")
    if [ "$total" -eq 0 ]; then
        bad=1 note="ran no test"
    elif [ "$code" -ne 0 ] && [ "$bad" -eq 0 ]; then
        bad=1 note="exit code $code though no test failed, see $output"
    elif [ "$bad" -ne 0 ]; then
        note="see $output"
    fi
    if [ "$bad" -ne 0 ]; then cat "$output"; else tail -n 3 "$output"; fi
    add_row "$name" "$good" "$bad" "$not_run" "$note"
}

check_form() {
    echo "== code form"
    # Whitespace only, and by folder: the build has already held the code style, and loading every project again would take minutes.
    if dotnet format whitespace . --folder --verify-no-changes --exclude artifacts; then
        rows+=("code form      in order")
    else
        add_row "code form" 0 1 0 "put right by: dotnet format whitespace . --folder --exclude artifacts"
    fi
}

names=()
for argument in "$@"; do
    case $argument in
        -h | --help) usage; exit 0 ;;
        *)
            if [ ! -d "tests/Scrapwright.$argument.Tests" ]; then
                echo "There is no test project $argument." >&2
                usage >&2
                exit 2
            fi
            names+=("$argument")
            ;;
    esac
done

everything=false
if [ ${#names[@]} -eq 0 ]; then
    everything=true
    for project in tests/Scrapwright.*.Tests; do
        names+=("$(short_name "$project")")
    done
fi

rm -rf "$reports"
mkdir -p "$reports"
if [[ " ${names[*]} " == *" Browser "* ]]; then need_browser; fi

build() {
    if $everything; then
        dotnet restore Scrapwright.slnx && dotnet build Scrapwright.slnx --no-restore -v minimal
    else
        local name
        for name in "${names[@]}"; do
            dotnet build "tests/Scrapwright.$name.Tests" -v minimal || return 1
        done
    fi
}

if build; then
    for name in "${names[@]}"; do
        run_project "$name"
    done
    if $everything; then check_form; fi
else
    add_row "build" 0 1 0 "does not build"
fi

printf '\n%-14s %8s %8s %8s\n' project passed failed skipped
printf '%s\n' "${rows[@]}"
printf '\n%d passed, %d failed, %d skipped\n' "$passed" "$failed" "$skipped"
[ "$failed" -eq 0 ]
