wainscot_test(store_unit unit
  SOURCES unit/store_book.cpp unit/store_migration.cpp unit/store_originals.cpp unit/store_pack.cpp
  LINK core_store Qt6::Sql)
wainscot_test(store_hostile fault SOURCES fault/store_hostile_packs.cpp LINK core_store)
wainscot_test(store_property property
  SOURCES property/store_undo.cpp support/random_edits.cpp
  LINK core_store)
wainscot_test(store_fault fault
  SOURCES fault/store_access.cpp fault/store_disk.cpp fault/store_killed.cpp
    support/random_edits.cpp
  LINK core_store Qt6::Sql)
