"""Applies a look-up table file with OpenColorIO to lines of three numbers from standard input, one answer per line.

    apply-file.py FILE
"""
import sys

import PyOpenColorIO as ocio

# Of a file with several corrections, the first.
transform = ocio.FileTransform(src=sys.argv[1], cccId="0", interpolation=ocio.INTERP_TETRAHEDRAL)
config = ocio.Config.CreateRaw()
processor = config.getProcessor(transform).getOptimizedCPUProcessor(ocio.OPTIMIZATION_LOSSLESS)
print("version", ocio.__version__)
for line in sys.stdin:
    print(*processor.applyRGB([float(v) for v in line.split()]))
