wainscot_test(check_unit unit
  SOURCES unit/check_contrast.cpp unit/check_display.cpp unit/check_rules.cpp
    support/check_panel.cpp
  LINK layout_check)
target_include_directories(check_unit PRIVATE ${CMAKE_CURRENT_SOURCE_DIR})
