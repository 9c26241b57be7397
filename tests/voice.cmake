add_library(selection_problems STATIC support/selection_problems.cpp)
target_link_libraries(selection_problems PUBLIC core_voice PRIVATE w_options)

wainscot_test(voice_unit unit SOURCES unit/voice_selection.cpp LINK selection_problems)
wainscot_test(voice_property property SOURCES property/voice_selection.cpp LINK selection_problems)
wainscot_test(voice_grouping_property property SOURCES property/voice_grouping.cpp LINK core_voice)
wainscot_test(voice_grouping_reference golden SOURCES golden/voice_grouping.cpp LINK core_voice)
