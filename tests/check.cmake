wainscot_test(check_unit unit
  SOURCES unit/check_contrast.cpp unit/check_display.cpp unit/check_mounted.cpp
    unit/check_rules.cpp unit/check_seams.cpp
    support/check_panel.cpp
  LINK layout_check)
