# Completion of taperbook's command line for bash.
@CANDIDATES@

_taperbook() {
  local current=${COMP_WORDS[COMP_CWORD]} found=
  local -a before=("${COMP_WORDS[@]:1:COMP_CWORD-1}")
  if [ "$current" = "=" ]; then
    before+=("=")
    current=
  fi
  found=$(__taperbook_candidates "${before[@]}")
  COMPREPLY=()
  case $found in
    @folders@)
      compopt -o filenames 2>/dev/null
      mapfile -t COMPREPLY < <(compgen -d -- "$current")
      ;;
    @pdf@)
      compopt -o filenames 2>/dev/null
      mapfile -t COMPREPLY < <(compgen -f -X '!*.pdf' -- "$current"; compgen -d -- "$current")
      ;;
    *)
      case $current in
        -*) found=$(__taperbook_options "${before[@]}") ;;
      esac
      mapfile -t COMPREPLY < <(compgen -W "$found" -- "$current")
      ;;
  esac
}

complete -F _taperbook taperbook
