# What fits behind the words that are given, one a line. The folder is looked into by the shell.
__taperbook_candidates() {
  [ -n "$ZSH_VERSION" ] && emulate -L sh
  local folder=. command= first= before=0 wants= word=
  for word in "$@"; do
    if [ -n "$wants" ]; then
      [ "$word" = "=" ] && continue
      [ "$wants" = --folder ] && folder=$word
      wants=
      continue
    fi
    case $word in
      --folder=*) folder=${word#*=} ;;
      @VALUED@) wants=$word ;;
      -*) ;;
      *)
        if [ -z "$command" ]; then
          command=$word
        else
          before=$((before + 1))
          [ "$before" -eq 1 ] && first=$word
        fi
        ;;
    esac
  done
  case $folder in "~"/*) folder=$HOME/${folder#*/} ;; esac
  case $wants in
@VALUES@
    *) __taperbook_places ;;
  esac
}

__taperbook_places() {
  if [ -z "$command" ]; then
    printf '%s\n' @COMMANDS@
    return
  fi
  case $command/$first/$before in
@PLACES@
  esac
}

__taperbook_options() {
  local command= word=
  for word in "$@"; do
    case $word in
      -*) ;;
      *) command=$word && break ;;
    esac
  done
  case $command in
@OPTIONS@
  esac
}

__taperbook_report() {
  local file=
  for file in "$1"/reports/*.md; do
    if [ -f "$file" ]; then
      file=${file##*/}
      printf '%s\n' "${file%.md}"
    fi
  done
}

__taperbook_reports() {
  __taperbook_report "$1"
}

__taperbook_session() {
  local file=
  for file in "$1"/sessions/*; do
    if [ -f "$file/readings.csv" ] || [ -f "$file/columns.csv" ]; then
      printf '%s\n' "${file##*/}"
    fi
  done
}

__taperbook_range_tests() {
  local file=
  for file in "$1"/sessions/*; do
    [ -f "$file/range-test.csv" ] && printf '%s\n' "${file##*/}"
  done
}

# A report that was not made yet has no numbers to name.
__taperbook_values_of() {
  [ -f "$1/reports/$2/numbers.json" ] || return 0
  sed -n 's/^ *"'"$3"'": *"\([A-Za-z0-9_.-]*\)",*$/\1/p' "$1/reports/$2/numbers.json" | sort -u
}

__taperbook_number() {
  __taperbook_values_of "$1" "$2" id
}

__taperbook_session_of_report() {
  __taperbook_values_of "$1" "$2" session
}

__taperbook_pdf() {
  echo @pdf@
}
