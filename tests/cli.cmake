wainscot_test(cli_unit unit SOURCES unit/cli_arguments.cpp LINK app_cli)
wainscot_test(cli_chain golden SOURCES golden/cli_chain.cpp LINK app_jobs test_scans)
target_compile_definitions(cli_chain PRIVATE WAINSCOT_CLI="$<TARGET_FILE:wainscot-cli>")
add_dependencies(cli_chain wainscot-cli)
wainscot_test(cli_rescue golden SOURCES golden/cli_rescue.cpp LINK Qt6::Core)
target_compile_definitions(cli_rescue PRIVATE WAINSCOT_CLI="$<TARGET_FILE:wainscot-cli>")
add_dependencies(cli_rescue wainscot-cli)
wainscot_test(export_struck fault
  SOURCES fault/export_struck.cpp support/worker_run.cpp
  LINK test_walls app_jobs)
target_compile_definitions(export_struck PRIVATE STORE_WORKER="$<TARGET_FILE:wainscot-cli>"
  FAILING_DISK="$<TARGET_FILE:failing_disk>" FAR_DISK="$<TARGET_FILE:far_disk>")
add_dependencies(export_struck wainscot-cli failing_disk far_disk)
wainscot_test(cli_sheets golden SOURCES golden/cli_sheets.cpp LINK app_jobs)
target_compile_definitions(cli_sheets PRIVATE WAINSCOT_CLI="$<TARGET_FILE:wainscot-cli>")
add_dependencies(cli_sheets wainscot-cli)
