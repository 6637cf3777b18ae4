package soundings.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import soundings.log.Inferred;

/** In a table with dates across, a line that holds nothing but a name stands over the tests below it: they are that tank's. */
final class GroupNames {
    private static final String BECAUSE = "the lines below a name of its own are of that tank";
    private static final int FEWEST_TESTS = 2;

    private GroupNames() {}

    static Shape settle(Shape shape, Words words) {
        if (!shape.table().area().turned() || !shape.dated() || shape.findTank().isPresent()) {
            return shape;
        }
        TankTitles titles = new TankTitles(words);
        List<Field> named = new ArrayList<>();
        String tank = "";
        int tests = 0;
        for (Field field : shape.fields()) {
            boolean known = field.role() == Role.TANK && !field.label().tank().isEmpty();
            boolean heads = shape.column(field).size() == 0 && (known || names(field, titles));
            tank = heads ? known ? field.label().tank() : field.header().strip() : tank;
            boolean takes = !tank.isEmpty()
                    && !heads
                    && field.label().tank().isEmpty()
                    && field.role().gives();
            tests += takes && field.role() == Role.READING ? 1 : 0;
            named.add(takes ? field.guessed(field.label().withTank(tank), Set.of(Inferred.TANK), BECAUSE) : field);
        }
        return tests >= FEWEST_TESTS
                ? new Shape(shape.table(), shape.topic(), named, shape.columns(), shape.doubt())
                : shape;
    }

    private static boolean names(Field field, TankTitles titles) {
        return field.role() == Role.UNKNOWN
                && !field.header().isBlank()
                && titles.nameLike(field.header())
                && !titles.general(field.header());
    }
}
