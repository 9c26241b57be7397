# Everything that reads what others made, given any bytes. A short run is a test; the programs fuzz_csv,
# fuzz_book ... (one for each target) are for long runs, with libFuzzer where clang builds them with
# -DWAINSCOT_FUZZ=ON.
option(WAINSCOT_FUZZ "build the long fuzzing runs with libFuzzer (clang)" OFF)
set(fuzzed core_base core_model core_media core_store Qt6::Sql)
add_library(fuzz_targets STATIC EXCLUDE_FROM_ALL fuzz/mutator.cpp fuzz/promises.cpp fuzz/seeds.cpp fuzz/targets.cpp
  fuzz/targets_pixels.cpp fuzz/targets_store.cpp)
target_link_libraries(fuzz_targets PUBLIC w_options test_places ${fuzzed})

wainscot_test(fuzz_short fault
  SOURCES fault/fuzz_short.cpp fuzz/all_targets.cpp fuzz/targets_jobs.cpp fuzz/targets_scan.cpp
  LINK app_jobs core_pdf fuzz_targets)

# fuzz_program(NAME FUNCTION [what it needs besides])
function(fuzz_program name function)
  add_executable(fuzz_${name} EXCLUDE_FROM_ALL fuzz/long_run.cpp ${ARGN})
  target_link_libraries(fuzz_${name} PRIVATE fuzz_targets)
  target_compile_definitions(fuzz_${name} PRIVATE FUZZ_TARGET="${name}" FUZZ_FUNCTION=${function})
  if(WAINSCOT_FUZZ)
    target_compile_definitions(fuzz_${name} PRIVATE WAINSCOT_LIBFUZZER)
    target_link_options(fuzz_${name} PRIVATE -fsanitize=fuzzer)
  endif()
endfunction()
foreach(name csv picture pixels treatment data table book pack)
  fuzz_program(${name} ${name})
endforeach()
fuzz_program(template templateFile)
fuzz_program(scan scan fuzz/targets_scan.cpp)
target_link_libraries(fuzz_scan PRIVATE core_pdf)
foreach(pair wall=wall class=classList words=words photos=photoList)
  string(REPLACE "=" ";" pair ${pair})
  list(GET pair 0 name)
  list(GET pair 1 function)
  fuzz_program(${name} ${function} fuzz/targets_jobs.cpp)
  target_link_libraries(fuzz_${name} PRIVATE app_jobs)
endforeach()
