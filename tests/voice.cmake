add_library(selection_problems STATIC support/selection_problems.cpp)
target_link_libraries(selection_problems PUBLIC core_voice PRIVATE w_options)

wainscot_test(voice_unit unit SOURCES unit/voice_selection.cpp LINK selection_problems)
wainscot_test(voice_property property SOURCES property/voice_selection.cpp LINK selection_problems)
wainscot_test(voice_group_words unit SOURCES unit/voice_group_words.cpp LINK core_voice)
wainscot_test(voice_answers_property property SOURCES property/voice_answers.cpp LINK core_voice)
wainscot_test(voice_grouping_property property SOURCES property/voice_grouping.cpp LINK core_voice)
wainscot_test(voice_grouping_reference golden SOURCES golden/voice_grouping.cpp LINK core_voice)

add_library(grouping_samples STATIC support/grouping_samples.cpp support/invented_spelling.cpp)
target_link_libraries(grouping_samples PUBLIC core_voice PRIVATE w_options)
wainscot_test(voice_grouping_quality property SOURCES property/voice_grouping_quality.cpp LINK grouping_samples)

# Measured by hand: CPU against scikit-learn and scipy, agreement on public texts.
add_executable(bench_groups bench/groups_bench.cpp)
target_link_libraries(bench_groups PRIVATE grouping_samples test_places w_options)

add_library(many_quotes STATIC support/many_quotes.cpp)
target_link_libraries(many_quotes PUBLIC core_voice PRIVATE w_options)
wainscot_test(voice_find property SOURCES property/voice_find.cpp LINK many_quotes Qt6::Sql)

# The CPU of finding among the words of ten years, beside looking through all of them.
add_executable(bench_find bench/find_bench.cpp)
target_link_libraries(bench_find PRIVATE many_quotes w_options)
add_test(NAME bench_find COMMAND bench_find 20000)
set_tests_properties(bench_find PROPERTIES LABELS bench TIMEOUT 300)
