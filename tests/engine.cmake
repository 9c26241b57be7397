add_library(engine_documents STATIC support/engine_documents.cpp)
target_link_libraries(engine_documents PUBLIC layout_engine)

# Looking at arrangements, not run by the tests.
add_executable(engine_picture bench/engine_picture.cpp)
target_link_libraries(engine_picture PRIVATE engine_documents)
