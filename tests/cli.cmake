wainscot_test(cli_unit unit SOURCES unit/cli_arguments.cpp LINK app_cli)
wainscot_test(cli_chain golden SOURCES golden/cli_chain.cpp LINK app_jobs)
target_compile_definitions(cli_chain PRIVATE WAINSCOT_CLI="$<TARGET_FILE:wainscot-cli>")
add_dependencies(cli_chain wainscot-cli)
