# Sourced by scripts that work the real window under Xvfb with xdotool. Needs $cotter and $here; makes $work and $book.
work=$(mktemp -d) book=
export COTTER=$cotter LIBGL_ALWAYS_SOFTWARE=1
trap 'kill $(jobs -p) 2>/dev/null || true; rm -rf "$work"' EXIT

make_book() { book=$work/sample.db; "$here/../../sample_site/make" "$book" --on 2026-11-25; }

# A display of its own; a server that does not come up, or dies, is started again.
open_display() { # WxH
  local try server
  for try in 1 2 3 4; do
    rm -f "$work/display"
    exec 3> >(cat >"$work/display")
    Xvfb -displayfd 3 -screen 0 "$1x24" >/dev/null 2>"$work/server" &
    server=$!
    exec 3>&-
    for _ in $(seq 300); do
      [ -s "$work/display" ] && break
      kill -0 "$server" 2>/dev/null || break
      sleep 0.1
    done
    DISPLAY=:$(cat "$work/display" 2>/dev/null); export DISPLAY
    [ "$DISPLAY" != : ] && xdpyinfo >/dev/null 2>&1 && return
    kill "$server" 2>/dev/null || true
    sleep 1
  done
  cat "$work/server" >&2
  fail "no display after $try tries"
}

open_window() { # PLACE ("": the first screen) WxH OPTIONS...
  local place=$1 size=$2
  shift 2
  rm -f "$work/layout"
  # shellcheck disable=SC2086
  "$cotter" $place --store "$book" --at 2026-11-25T08:00:00Z --px-per-mm 5.88 --size "$size" --layout "$work/layout" "$@" &
  window=$!
}

close_window() { kill "$window"; wait "$window" 2>/dev/null || true; }

fail() { printf 'FAILED: %s\non the screen:\n' "$1"; cut -f1,6 "$work/layout" || true; exit 1; }
on_screen() { awk -F'\t' '$1 == "text" { print $6 }' "$work/layout" 2>/dev/null | tr '\n' ' ' | grep -qF -- "$1"; } # over line breaks
wait_for() { for _ in $(seq 100); do on_screen "$1" && return 0; sleep 0.1; done; fail "waited for: $1"; }
place_of() { awk -F'\t' -v w="$1" '$1 == "target" && $6 == w { print int($2+$4/2), int($3+$5/2); exit }' "$work/layout"; }
has_target() { [ -n "$(place_of "$1")" ]; }
wait_target() { for _ in $(seq 100); do has_target "$1" && return 0; sleep 0.1; done; fail "no target: $1"; }
first_target_but() { awk -F'\t' -v w="$1" '$1 == "target" && $6 != w { print $6; exit }' "$work/layout"; }
tap() {
  local at
  for _ in $(seq 50); do at=$(place_of "$1"); [ -n "$at" ] && break; sleep 0.1; done
  [ -n "$at" ] || fail "no target: $1"
  # shellcheck disable=SC2086
  sleep 0.35; xdotool mousemove $at; sleep 0.05; xdotool mousedown 1; sleep 0.05; xdotool mouseup 1; sleep 0.2
}
# A document of the book's facts: KIND KEY FIELD (read while no window has it open).
fact() {
  python3 - "$book" "$@" <<'PY'
import json, sqlite3, sys
doc = sqlite3.connect(sys.argv[1]).execute("SELECT doc FROM fact WHERE kind = ? AND key = ?", sys.argv[2:4]).fetchone()[0]
value = json.loads(doc)
for step in sys.argv[4].split("."):
    value = value[int(step) if step.lstrip("-").isdigit() else step]
print(value)
PY
}
