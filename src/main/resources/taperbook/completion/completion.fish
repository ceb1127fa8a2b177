# Completion of taperbook's command line for fish.
function __taperbook_read --description 'Sets folder, command, first and before from the words so far'
    set -g __taperbook_folder .
    set -g __taperbook_command
    set -g __taperbook_first
    set -g __taperbook_before 0
    set -l wants
    for word in (commandline -opc)[2..-1]
        if test -n "$wants"
            test "$wants" = --folder; and set __taperbook_folder (string replace -r '^~(?=/)' $HOME -- $word)
            set wants
            continue
        end
        switch $word
            case '--folder=*'
                set __taperbook_folder (string replace -- '--folder=' '' $word)
            case @VALUED@
                set wants $word
            case '-*'
            case '*'
                if test -z "$__taperbook_command"
                    set __taperbook_command $word
                else
                    set __taperbook_before (math $__taperbook_before + 1)
                    test $__taperbook_before -eq 1; and set __taperbook_first $word
                end
        end
    end
end

function __taperbook_begins
    __taperbook_read
    test -z "$__taperbook_command"
end

function __taperbook_takes
    __taperbook_read
    __taperbook_options | string match -q -- $argv[1]
end

function __taperbook_options
    switch "$__taperbook_command"
@OPTIONS@
    end
end

function __taperbook_candidates
    __taperbook_read
    set -l folder $__taperbook_folder
    set -l first $__taperbook_first
    switch "$__taperbook_command/$__taperbook_first/$__taperbook_before"
@PLACES@
    end
end

function __taperbook_report
    for file in $argv[1]/reports/*.md
        test -f $file; and string replace -r '\.md$' '' (basename $file)
    end
end

function __taperbook_reports
    __taperbook_report $argv[1]
end

function __taperbook_session
    for file in $argv[1]/sessions/*
        if test -f $file/readings.csv; or test -f $file/columns.csv
            basename $file
        end
    end
end

function __taperbook_range_tests
    for file in $argv[1]/sessions/*
        test -f $file/range-test.csv; and basename $file
    end
end

# A report that was not made yet has no numbers to name.
function __taperbook_values_of
    set -l numbers $argv[1]/reports/$argv[2]/numbers.json
    test -f $numbers; or return 0
    sed -n 's/^ *"'$argv[3]'": *"\([A-Za-z0-9_.-]*\)",*$/\1/p' $numbers | sort -u
end

function __taperbook_number
    __taperbook_values_of $argv[1] $argv[2] id
end

function __taperbook_session_of_report
    __taperbook_values_of $argv[1] $argv[2] session
end

function __taperbook_pdf
    __fish_complete_suffix .pdf
end

complete -c taperbook -f
@DESCRIBED@
complete -c taperbook -n 'not __taperbook_begins' -f -a '(__taperbook_candidates)'
