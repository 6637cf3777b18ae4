package soundings.log;

import java.util.List;

/**
 * How one table of a sheet was read, for the keeper to check in a minute.
 *
 * @param region the block in A1 notation
 * @param layout the layout's name
 * @param sure 0 to 1
 * @param because why this layout and not another
 */
public record BlockReading(
        String sheet, String region, String layout, double sure, String because, List<ColumnReading> columns) {
    public BlockReading {
        columns = List.copyOf(columns);
    }
}
