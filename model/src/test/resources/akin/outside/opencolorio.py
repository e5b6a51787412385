"""Runs OpenColorIO on request lines from standard input and prints one answer per line, three numbers each.

    builtin|STYLE|r g b
    logcamera|base log-side-slope log-side-offset lin-side-slope lin-side-offset lin-side-break linear-slope|r g b

The log camera transform is run from linear light to code values.
"""
import sys

import PyOpenColorIO as ocio

processors = {}


def processor(kind, parameters):
    key = (kind, parameters)
    if key not in processors:
        if kind == "builtin":
            transform = ocio.BuiltinTransform(style=parameters)
        else:
            base, log_slope, log_offset, lin_slope, lin_offset, lin_break, linear = map(float, parameters.split())
            transform = ocio.LogCameraTransform(
                base=base,
                logSideSlope=[log_slope] * 3,
                logSideOffset=[log_offset] * 3,
                linSideSlope=[lin_slope] * 3,
                linSideOffset=[lin_offset] * 3,
                linSideBreak=[lin_break] * 3,
                linearSlope=[linear] * 3,
            )
        config = ocio.Config.CreateRaw()
        processors[key] = config.getProcessor(transform).getOptimizedCPUProcessor(ocio.OPTIMIZATION_LOSSLESS)
    return processors[key]


print("version", ocio.__version__)
for line in sys.stdin:
    kind, parameters, rgb = line.rstrip("\n").split("|")
    print(*processor(kind, parameters).applyRGB([float(v) for v in rgb.split()]))
