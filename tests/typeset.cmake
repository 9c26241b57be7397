add_library(typeset_panels STATIC unit/typeset_panels.cpp)
target_link_libraries(typeset_panels PUBLIC w_options core_permit layout_typeset)

add_executable(typeset_picture bench/typeset_picture.cpp)
target_link_libraries(typeset_picture PRIVATE w_options typeset_panels layout_screen)

wainscot_test(typeset_unit unit
  SOURCES unit/typeset_style.cpp unit/typeset_faces.cpp unit/typeset_breaking.cpp
    unit/typeset_text.cpp unit/typeset_typesetter.cpp
  LINK typeset_panels)
wainscot_test(typeset_property property SOURCES property/typeset_measure.cpp LINK typeset_panels)
wainscot_test(screen_unit unit SOURCES unit/screen_painter.cpp unit/screen_blur.cpp LINK typeset_panels layout_screen)
wainscot_test(typeset_golden golden SOURCES golden/typeset_golden.cpp LINK typeset_panels)

# The same lines whatever the screen's resolution is said to be.
add_test(NAME typeset_golden_fine_screen COMMAND typeset_golden)
set_tests_properties(typeset_golden_fine_screen PROPERTIES LABELS golden
  ENVIRONMENT "QT_QPA_PLATFORM=offscreen;QT_FONT_DPI=163;QT_SCALE_FACTOR=2")
