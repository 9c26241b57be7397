wainscot_test(jobs_unit unit
  SOURCES unit/jobs_arrange.cpp unit/jobs_gather.cpp unit/jobs_photos.cpp
    unit/jobs_templates.cpp unit/jobs_treated.cpp support/class_book.cpp
  LINK app_jobs media_test_pictures)
wainscot_test(jobs_golden golden SOURCES golden/sample_style.cpp LINK app_jobs)
wainscot_test(jobs_kinds unit SOURCES unit/jobs_kinds.cpp support/class_book.cpp LINK app_jobs)
wainscot_test(jobs_erase unit SOURCES unit/jobs_erase.cpp support/class_book.cpp LINK app_jobs)
wainscot_test(jobs_hang unit SOURCES unit/jobs_hang.cpp support/class_book.cpp LINK app_jobs)
wainscot_test(jobs_why unit SOURCES unit/jobs_why.cpp support/class_book.cpp LINK app_jobs)
