wainscot_test(jobs_unit unit
  SOURCES unit/jobs_arrange.cpp unit/jobs_gather.cpp unit/jobs_photos.cpp
    unit/jobs_templates.cpp unit/jobs_treated.cpp
  LINK test_walls app_jobs test_scans)
wainscot_test(jobs_spread unit
  SOURCES unit/jobs_spread.cpp
  LINK test_walls app_jobs)
wainscot_test(jobs_golden golden SOURCES golden/sample_style.cpp LINK app_jobs)
wainscot_test(jobs_class_list unit
  SOURCES unit/jobs_class_list.cpp unit/jobs_gather_files.cpp LINK test_books app_jobs test_scans)
wainscot_test(jobs_kinds unit SOURCES unit/jobs_kinds.cpp LINK test_books app_jobs)
wainscot_test(jobs_about_book unit SOURCES unit/jobs_about_book.cpp LINK test_books app_jobs)
wainscot_test(jobs_erase unit SOURCES unit/jobs_erase.cpp LINK test_books app_jobs)
wainscot_test(jobs_hang unit SOURCES unit/jobs_hang.cpp LINK test_books app_jobs)
wainscot_test(jobs_listen unit SOURCES unit/jobs_listen.cpp LINK test_books app_jobs)
wainscot_test(jobs_group_edits unit SOURCES unit/jobs_group_edits.cpp LINK test_books app_jobs)
wainscot_test(jobs_meetings unit SOURCES unit/jobs_meetings.cpp LINK test_books app_jobs)
wainscot_test(jobs_why unit SOURCES unit/jobs_why.cpp LINK test_books app_jobs)
wainscot_test(jobs_go_back unit SOURCES unit/jobs_go_back.cpp LINK test_books app_jobs)
wainscot_test(keep_unit unit
  SOURCES unit/permit_term.cpp unit/typeset_term.cpp golden/keep_file.cpp
  LINK test_books app_jobs media_test_pictures)

add_executable(bench_keep bench/keep_bench.cpp)
target_link_libraries(bench_keep PRIVATE w_options app_jobs media_test_pictures)
add_test(NAME bench_keep COMMAND bench_keep --quick)
set_tests_properties(bench_keep PROPERTIES LABELS bench TIMEOUT 900
  ENVIRONMENT "QT_QPA_PLATFORM=offscreen")
wainscot_test(jobs_privacy property
  SOURCES property/jobs_privacy.cpp
  LINK test_walls app_jobs)
wainscot_test(jobs_take_down unit SOURCES unit/jobs_take_down.cpp LINK test_books app_jobs)
wainscot_test(jobs_wall_plan unit SOURCES unit/jobs_wall_plan.cpp LINK test_books app_jobs)
wainscot_test(jobs_goals unit SOURCES unit/jobs_goals.cpp LINK test_books app_jobs)
wainscot_test(answer_sheets golden
  SOURCES golden/paper_answer_sheets.cpp
  LINK test_books app_jobs)
wainscot_test(jobs_check unit
  SOURCES unit/jobs_check.cpp LINK test_walls app_jobs)
wainscot_test(jobs_pictures unit
  SOURCES unit/jobs_pictures.cpp LINK test_walls app_jobs)
wainscot_test(jobs_made_files unit SOURCES unit/jobs_made_files.cpp LINK test_books app_jobs)
