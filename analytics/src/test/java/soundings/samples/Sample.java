package soundings.samples;

import java.util.List;

/** One generated sample: the log's file name and bytes, its setup workbook's bytes, and the truth. */
record Sample(String fileName, byte[] log, byte[] setup, List<String> truth) {
    String stem() {
        return fileName.substring(0, fileName.lastIndexOf('.'));
    }
}
