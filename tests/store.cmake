wainscot_test(store_unit unit
  SOURCES unit/store_book.cpp unit/store_earlier.cpp unit/store_made_files.cpp unit/store_migration.cpp unit/store_originals.cpp unit/store_pack.cpp
  LINK test_books core_store Qt6::Sql)
wainscot_test(store_threads unit SOURCES unit/store_threads.cpp LINK core_store Threads::Threads)
wainscot_test(store_hostile fault SOURCES fault/store_hostile_packs.cpp fault/store_hostile_books.cpp LINK core_store Qt6::Sql)
wainscot_test(store_property property
  SOURCES property/store_undo.cpp
  LINK test_books core_store)
pkg_check_modules(SODIUM REQUIRED IMPORTED_TARGET libsodium)
wainscot_test(store_lock unit SOURCES unit/store_lock.cpp LINK core_store PkgConfig::SODIUM)
wainscot_test(store_repair fault SOURCES fault/store_repair.cpp LINK core_store)
wainscot_test(store_fault fault
  SOURCES fault/store_access.cpp fault/store_disk.cpp fault/store_killed.cpp
  LINK test_books core_store Qt6::Sql)

# A program to be struck down at work, and a disk that fails under it.
add_executable(store_worker support/store_worker.cpp)
target_link_libraries(store_worker PRIVATE w_options test_books core_store)
add_library(failing_disk MODULE support/failing_disk.cpp)
target_link_libraries(failing_disk PRIVATE w_options ${CMAKE_DL_LIBS})
add_library(far_disk MODULE support/far_disk.cpp)
target_link_libraries(far_disk PRIVATE w_options ${CMAKE_DL_LIBS})
foreach(name store_kills store_failing_disk store_far_disk store_full_disk)
  wainscot_test(${name} fault
    SOURCES fault/${name}.cpp support/worker_run.cpp support/store_tasks.cpp
    LINK test_books core_store Qt6::Sql)
  target_compile_definitions(${name} PRIVATE STORE_WORKER="$<TARGET_FILE:store_worker>"
    FAILING_DISK="$<TARGET_FILE:failing_disk>" FAR_DISK="$<TARGET_FILE:far_disk>")
  add_dependencies(${name} store_worker failing_disk far_disk)
endforeach()
target_sources(store_full_disk PRIVATE support/small_disk.cpp)

add_executable(bench_load bench/store_load.cpp)
target_link_libraries(bench_load PRIVATE w_options core_store)
add_test(NAME bench_load COMMAND bench_load 20 2000 800)
set_tests_properties(bench_load PROPERTIES LABELS bench TIMEOUT 900)

wainscot_test(store_data property
  SOURCES property/store_data.cpp fault/store_bad_data.cpp
  LINK test_books core_store)
