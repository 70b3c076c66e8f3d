set(LATHHOUSE_EMBED_SCRIPT ${CMAKE_CURRENT_LIST_DIR}/embed_text.cmake)

# lathhouse_embed_text(TARGET FILE NAMESPACE NAME): builds the text file into the target, to be read by
# `std::string_view NAMESPACE::NAME()`.
function(lathhouse_embed_text target file namespace name)
    set(output ${CMAKE_CURRENT_BINARY_DIR}/${name}.cpp)
    add_custom_command(
        OUTPUT ${output}
        COMMAND ${CMAKE_COMMAND} -DINPUT=${CMAKE_CURRENT_SOURCE_DIR}/${file} -DOUTPUT=${output}
                -DNAMESPACE=${namespace} -DNAME=${name} -P ${LATHHOUSE_EMBED_SCRIPT}
        DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/${file} ${LATHHOUSE_EMBED_SCRIPT}
        COMMENT "Embedding ${file}"
        VERBATIM)
    add_custom_target(${name} DEPENDS ${output})
    set_source_files_properties(${output} TARGET_DIRECTORY ${target} PROPERTIES GENERATED TRUE)
    target_sources(${target} PRIVATE ${output})
    add_dependencies(${target} ${name})
endfunction()
