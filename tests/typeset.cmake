add_library(typeset_panels STATIC unit/typeset_panels.cpp)
target_link_libraries(typeset_panels PUBLIC w_options core_permit layout_typeset)

add_executable(typeset_picture bench/typeset_picture.cpp)
target_link_libraries(typeset_picture PRIVATE w_options typeset_panels layout_screen)

wainscot_test(typeset_unit unit
  SOURCES unit/typeset_style.cpp unit/typeset_faces.cpp unit/typeset_breaking.cpp
    unit/typeset_text.cpp unit/typeset_typesetter.cpp
  LINK typeset_panels)
