# Everything that reads what others made, given any bytes. A short run is a test; the programs
# fuzz_csv, fuzz_template, fuzz_picture, fuzz_data, fuzz_book and fuzz_pack are for long runs, with libFuzzer
# where clang builds them with -DWAINSCOT_FUZZ=ON.
option(WAINSCOT_FUZZ "build the long fuzzing runs with libFuzzer (clang)" OFF)
set(fuzzed core_base core_model core_media core_store Qt6::Sql)

wainscot_test(fuzz_short fault
  SOURCES fault/fuzz_short.cpp fuzz/mutator.cpp fuzz/targets.cpp fuzz/targets_store.cpp
  LINK ${fuzzed})
foreach(name csv template picture data book pack)
  add_executable(fuzz_${name} EXCLUDE_FROM_ALL fuzz/long_run.cpp fuzz/mutator.cpp fuzz/targets.cpp fuzz/targets_store.cpp)
  target_link_libraries(fuzz_${name} PRIVATE w_options test_places ${fuzzed})
  target_compile_definitions(fuzz_${name} PRIVATE FUZZ_TARGET="${name}")
  if(WAINSCOT_FUZZ)
    target_compile_definitions(fuzz_${name} PRIVATE WAINSCOT_LIBFUZZER)
    target_link_options(fuzz_${name} PRIVATE -fsanitize=fuzzer)
  endif()
endforeach()
