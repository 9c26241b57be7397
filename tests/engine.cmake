add_library(engine_documents STATIC
  support/engine_documents.cpp support/engine_edits.cpp)
target_link_libraries(engine_documents PUBLIC layout_engine)

# Looking at arrangements, not run by the tests.
add_executable(engine_picture bench/engine_picture.cpp)
target_link_libraries(engine_picture PRIVATE engine_documents)

wainscot_test(engine_alternatives property SOURCES property/engine_alternatives.cpp
  LINK engine_documents)
wainscot_test(engine_again property SOURCES property/engine_again.cpp LINK engine_documents)
wainscot_test(engine_breaks property SOURCES property/engine_breaks.cpp LINK engine_documents)
wainscot_test(engine_exact property SOURCES property/engine_exact.cpp LINK engine_documents)
wainscot_test(engine_nearest property SOURCES property/engine_nearest.cpp LINK engine_documents)
wainscot_test(engine_pinned property SOURCES property/engine_pinned.cpp LINK engine_documents)
wainscot_test(engine_properties property SOURCES property/engine_properties.cpp
  LINK engine_documents)

# Documents of real pieces, and the panel style's tests on how they are laid out.
add_library(wall_quality STATIC
  support/wall_texts.cpp support/wall_documents.cpp support/wall_layouts.cpp
  support/wall_baselines.cpp support/wall_boxes.cpp support/wall_quality.cpp)
target_link_libraries(wall_quality PUBLIC w_options engine_documents app_jobs PRIVATE test_places)

wainscot_test(engine_quality property SOURCES property/engine_quality.cpp LINK wall_quality)

# Measured by hand, a section for each promise of the engine; see bench/engine_tables.h.
add_executable(bench_engine
  bench/engine_bench.cpp
  bench/engine_alternatives.cpp bench/engine_stability.cpp bench/engine_pins.cpp
  bench/engine_display.cpp
  bench/engine_speed.cpp
  bench/engine_quality.cpp bench/quality_sheet.cpp
  bench/engine_sparse.cpp bench/engine_plans.cpp
  bench/engine_selection.cpp)
target_link_libraries(bench_engine PRIVATE w_options test_books engine_documents wall_quality
  selection_problems Qt6::Gui)
wainscot_test(engine_templates unit SOURCES unit/engine_templates.cpp LINK engine_documents)
wainscot_test(engine_explain unit SOURCES unit/engine_explain.cpp LINK engine_documents)
wainscot_test(engine_arrange unit
  SOURCES unit/engine_arrange.cpp unit/engine_page_sizes.cpp unit/engine_pins.cpp
  LINK engine_documents)
wainscot_test(engine_hand property SOURCES property/engine_hand.cpp LINK engine_documents)
wainscot_test(engine_faults unit SOURCES unit/engine_faults.cpp LINK engine_documents)
wainscot_test(engine_spread unit SOURCES unit/engine_spread.cpp LINK engine_documents)
