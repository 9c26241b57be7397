// libjpeg reports errors by a call that must not return. The jump goes only to the function of
// ours that made the call, which therefore must hold no object with a destructor.
#pragma once

#include <csetjmp>
#include <cstddef>
#include <cstdio>

#include <jpeglib.h>

namespace wainscot {

struct JpegErrors {
    jpeg_error_mgr manager = {}; // must stay first: libjpeg hands back its address
    std::jmp_buf jump = {};

    JpegErrors()
    {
        jpeg_std_error(&manager);
        manager.error_exit = [](j_common_ptr info) {
            std::longjmp(reinterpret_cast<JpegErrors*>(info->err)->jump, 1);
        };
        // Warnings are counted by num_warnings; nothing is printed.
        manager.output_message = [](j_common_ptr) {};
    }
};

} // namespace wainscot
