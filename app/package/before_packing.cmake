# Run by CPack between installing into its folder and packing that folder: manual page and changelog compressed without
# name and time, and all times those of SOURCE_DATE_EPOCH where it is set, so that equal sources give equal bytes.
cmake_policy(VERSION 3.25)
file(GLOB_RECURSE squeezed ${CPACK_TEMPORARY_DIRECTORY}/*/share/man/man1/*.1
                           ${CPACK_TEMPORARY_DIRECTORY}/*/share/doc/lathhouse/changelog)
if(squeezed)
    execute_process(COMMAND gzip --best --no-name --force ${squeezed} COMMAND_ERROR_IS_FATAL ANY)
endif()
if(NOT "$ENV{SOURCE_DATE_EPOCH}" STREQUAL "")
    execute_process(COMMAND find ${CPACK_TEMPORARY_DIRECTORY} -exec touch --no-dereference
                            --date=@$ENV{SOURCE_DATE_EPOCH} {} +
                    COMMAND_ERROR_IS_FATAL ANY)
endif()
