// qpdf's objects, files and writer, without its JSON: nothing here uses that, and clang 14 cannot
// read its header as C++20 (a vector of a class that is not complete yet).
#pragma once

#define JSON_HH // the guard of that header
class JSON;

#include <qpdf/Pipeline.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFWriter.hh>
