# Writes a C++ source that holds a text file as bytes:
#   cmake -DINPUT=file -DOUTPUT=file.cpp -DNAMESPACE=a::b -DNAME=name -P embed_text.cmake
# The source defines `std::string_view NAMESPACE::NAME()`, which its user declares in a header.
file(READ ${INPUT} bytes HEX)
string(REGEX REPLACE "([0-9a-f][0-9a-f])" "'\\\\x\\1'," bytes "${bytes}")
get_filename_component(file_name ${INPUT} NAME)
file(WRITE ${OUTPUT} "// Made from ${file_name} by the build.
#include <string_view>
namespace ${NAMESPACE} {
std::string_view ${NAME}();
std::string_view ${NAME}()
{
    static constexpr char kText[] = {${bytes}'\\0'};
    return {kText, sizeof kText - 1};
}
} // namespace ${NAMESPACE}
")
