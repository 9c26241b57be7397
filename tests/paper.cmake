add_library(paper_kit STATIC golden/paper_kit.cpp)
target_link_libraries(paper_kit PUBLIC layout_paper PRIVATE w_options)

wainscot_test(paper_unit unit
  SOURCES unit/paper_syntax.cpp unit/paper_boxes.cpp unit/paper_sheet_plan.cpp unit/paper_fonts.cpp
  LINK paper_kit cups)
wainscot_test(paper_golden golden
  SOURCES golden/paper_pages.cpp golden/paper_text.cpp golden/paper_pictures.cpp
    golden/paper_sheets.cpp
  LINK paper_kit)
pkg_check_modules(QPDF REQUIRED IMPORTED_TARGET libqpdf)
wainscot_test(paper_archive golden
  SOURCES golden/paper_archive.cpp golden/paper_faithful.cpp support/archive_acts.cpp
    support/archive_clauses.cpp support/archive_file.cpp support/archive_fonts.cpp
    support/archive_graphics.cpp support/archive_metadata.cpp support/archive_structure.cpp
    support/archive_spoilings.cpp support/archive_further_spoilings.cpp support/spoil_tools.cpp
  LINK paper_kit layout_screen PkgConfig::QPDF)
wainscot_test(paper_fault fault SOURCES fault/paper_faults.cpp LINK paper_kit)

add_executable(bench_paper bench/paper_bench.cpp)
target_link_libraries(bench_paper PRIVATE w_options layout_paper media_test_pictures)
add_test(NAME bench_paper COMMAND bench_paper --quick)
set_tests_properties(bench_paper PROPERTIES LABELS bench TIMEOUT 900
  ENVIRONMENT "QT_QPA_PLATFORM=offscreen")
