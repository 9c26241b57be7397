wainscot_test(permit_unit unit
  SOURCES unit/permit_captions.cpp unit/permit_family_answers.cpp unit/permit_languages.cpp
    unit/permit_names.cpp unit/permit_panel.cpp unit/permit_rules.cpp unit/permit_sheets.cpp
    unit/permit_table.cpp
  LINK test_books core_permit)
