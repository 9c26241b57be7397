find_package(ZLIB REQUIRED)

add_library(media_test_pictures STATIC support/media_pictures.cpp)
target_link_libraries(media_test_pictures PUBLIC w_options Qt6::Gui PRIVATE ZLIB::ZLIB)
add_library(test_scans STATIC support/scan_files.cpp)
target_link_libraries(test_scans PUBLIC w_options media_test_pictures)

add_executable(bench_gather bench/media_gather_bench.cpp)
target_link_libraries(bench_gather PRIVATE w_options core_media media_test_pictures)
add_test(NAME bench_gather COMMAND bench_gather --quick)
set_tests_properties(bench_gather PROPERTIES LABELS bench TIMEOUT 900
  ENVIRONMENT "QT_QPA_PLATFORM=offscreen")

wainscot_test(media_unit unit
  SOURCES unit/media_orientation.cpp unit/media_colour.cpp unit/media_bake.cpp
    unit/media_heif_references.cpp unit/media_intake.cpp unit/media_likeness.cpp unit/media_resample.cpp unit/media_treat.cpp
  LINK core_media media_test_pictures test_places)
wainscot_test(media_fault fault SOURCES fault/media_bad_files.cpp
  LINK core_media media_test_pictures ZLIB::ZLIB)
wainscot_test(media_property property SOURCES property/media_random_bytes.cpp property/media_treatments.cpp
  LINK core_media media_test_pictures)
wainscot_test(media_scan unit SOURCES unit/media_scan.cpp unit/media_blank_page.cpp
  LINK core_media core_pdf test_scans)
wainscot_test(media_scan_fault fault SOURCES fault/media_bad_scans.cpp LINK core_media test_scans)
add_dependencies(media_scan wainscot-scan)
add_dependencies(media_scan_fault wainscot-scan)
