find_library(WAINSCOT_CUPS cups REQUIRED)
wainscot_test(base_unit unit
  SOURCES unit/base_csv.cpp unit/base_length.cpp unit/base_paper_size.cpp unit/base_quantity.cpp
    unit/base_wall_text.cpp
  LINK core_base ${WAINSCOT_CUPS})
wainscot_test(base_property property
  SOURCES property/base_csv.cpp
  LINK core_base)
