#compdef taperbook
# Completion of taperbook's command line for zsh.
@CANDIDATES@

_taperbook() {
  local found
  found=$(__taperbook_candidates "${(@)words[2,CURRENT-1]}")
  case $found in
    @folders@) _files -/ ;;
    @pdf@) _files -g '*.pdf(-.)' ;;
    *)
      case $PREFIX in
        -*) found=$(__taperbook_options "${(@)words[2,CURRENT-1]}") ;;
      esac
      compadd -- ${(f)found}
      ;;
  esac
}

compdef _taperbook taperbook
