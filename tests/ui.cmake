# The window. Its tests have a main of their own: they need an application with widgets.
add_library(ui_at_work STATIC support/window_at_work.cpp support/ui_test_main.cpp)
target_include_directories(ui_at_work PUBLIC ${CMAKE_CURRENT_SOURCE_DIR})
target_link_libraries(ui_at_work PUBLIC app_ui Qt6::Test GTest::gmock)

wainscot_test(ui_unit unit
  SOURCES unit/ui_caret_match.cpp unit/ui_finding_mark.cpp unit/ui_grid_snap.cpp unit/ui_guides.cpp unit/ui_names.cpp unit/ui_clipboard.cpp unit/ui_panel_edits.cpp unit/ui_picture_edits.cpp
    unit/ui_spelling.cpp unit/ui_tokens.cpp
  LINK test_books ui_at_work)
wainscot_test(ui_hostile fault
  SOURCES fault/ui_hostile.cpp fuzz/mutator.cpp
  LINK test_books ui_at_work)
wainscot_test(ui_compose gui SOURCES gui/ui_compose.cpp LINK ui_at_work)
wainscot_test(ui_drawer gui SOURCES gui/ui_drawer.cpp LINK ui_at_work)
wainscot_test(ui_gather gui SOURCES gui/ui_gather.cpp LINK ui_at_work test_scans)
wainscot_test(ui_hand gui SOURCES gui/ui_hand.cpp LINK ui_at_work)
wainscot_test(ui_hang gui SOURCES gui/ui_hang.cpp LINK ui_at_work media_test_pictures)
wainscot_test(ui_incoming gui SOURCES gui/ui_incoming.cpp LINK ui_at_work test_scans)
wainscot_test(ui_keep gui SOURCES gui/ui_keep.cpp LINK ui_at_work)
wainscot_test(ui_meanwhile gui SOURCES gui/ui_meanwhile.cpp LINK ui_at_work)
wainscot_test(ui_mends gui SOURCES gui/ui_mends.cpp LINK ui_at_work)
wainscot_test(ui_pictures gui SOURCES gui/ui_pictures.cpp LINK ui_at_work)
wainscot_test(ui_rescue gui SOURCES gui/ui_rescue.cpp LINK ui_at_work)
wainscot_test(ui_series gui SOURCES gui/ui_series.cpp LINK ui_at_work)
wainscot_test(ui_strip gui SOURCES gui/ui_strip.cpp LINK ui_at_work)
wainscot_test(ui_views gui SOURCES gui/ui_views.cpp LINK ui_at_work)
wainscot_test(ui_listen gui SOURCES gui/ui_listen.cpp LINK ui_at_work)
wainscot_test(ui_looks gui SOURCES gui/ui_looks.cpp LINK ui_at_work)
wainscot_test(ui_sight gui SOURCES gui/ui_sight.cpp LINK ui_at_work)
wainscot_test(ui_moments gui SOURCES gui/ui_moments.cpp LINK ui_at_work)
wainscot_test(ui_undo property SOURCES property/ui_undo.cpp LINK ui_at_work)
wainscot_test(ui_languages gui SOURCES gui/ui_languages.cpp LINK ui_at_work)
wainscot_test(ui_writing gui SOURCES gui/ui_writing.cpp LINK ui_at_work)
wainscot_test(ui_window gui SOURCES gui/ui_window.cpp LINK ui_at_work)
wainscot_test(ui_mirrored gui SOURCES gui/ui_mirrored.cpp LINK ui_at_work)
wainscot_test(ui_work gui SOURCES gui/ui_work.cpp LINK ui_at_work)
set_property(TEST ui_work APPEND PROPERTY ENVIRONMENT "QT_NO_GLIB=1")
wainscot_test(ui_first_steps gui SOURCES gui/ui_first_steps.cpp LINK ui_at_work)

# Measured by hand: CPU of a drag against a full repaint, and of opening a book of many photos.
add_executable(bench_drag bench/ui_drag_bench.cpp)
target_link_libraries(bench_drag PRIVATE app_ui Qt6::Test)
add_executable(bench_open bench/ui_open_bench.cpp)
target_link_libraries(bench_open PRIVATE app_ui Qt6::Test)

# Looked at by hand: every place of the window in every look.
add_executable(window_pictures gui/window_pictures.cpp)
target_link_libraries(window_pictures PRIVATE app_ui Qt6::Test)
wainscot_test(ui_find gui SOURCES gui/ui_find.cpp LINK ui_at_work)
wainscot_test(ui_limits gui SOURCES gui/ui_limits.cpp LINK ui_at_work)
wainscot_test(ui_sheets gui SOURCES gui/ui_sheets.cpp gui/ui_print.cpp LINK ui_at_work media_test_pictures)
# They share the program's settings.
set_tests_properties(ui_hang ui_limits ui_mends ui_sheets PROPERTIES RESOURCE_LOCK window_settings)
