add_library(selection_problems STATIC support/selection_problems.cpp)
target_link_libraries(selection_problems PUBLIC core_voice PRIVATE w_options)

# CPU beside other solvers; its quick form only shows that it runs.
add_executable(bench_selection bench/engine_selection.cpp)
target_link_libraries(bench_selection PRIVATE selection_problems)
add_test(NAME bench_selection COMMAND bench_selection --quick)
set_tests_properties(bench_selection PROPERTIES LABELS bench TIMEOUT 900)

wainscot_test(voice_unit unit SOURCES unit/voice_selection.cpp LINK selection_problems)
wainscot_test(voice_property property SOURCES property/voice_selection.cpp LINK selection_problems)
