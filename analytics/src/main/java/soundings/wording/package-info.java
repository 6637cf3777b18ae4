/**
 * What a piece of a keeper's text means, without knowing where it stands: amounts, dates, headers, phrases.
 *
 * <p>In: a text and a {@link soundings.wording.Vocabulary}. Out: a meaning with how sure it is, never an exception.
 * Start at {@link soundings.wording.Amounts}, {@link soundings.wording.Dates}, {@link soundings.wording.Headers} and
 * {@link soundings.wording.Phrases}. It must not know cells, neighbours or sheets: weighing a text against its place is
 * the layout's work.
 */
@NullMarked
package soundings.wording;

import org.jspecify.annotations.NullMarked;
