/**
 * Register marks: what they look like, where they stand on a sheet, and where they are in a scan of it.
 * <p>
 * {@link org.frisket.print.marks.MarkPlacement} proposes a {@link org.frisket.print.marks.MarkPlan},
 * {@link org.frisket.print.marks.MarkCheck} says what is wrong with one, {@link org.frisket.print.marks.MarkFinder} finds its
 * marks in a picture: dark spots of the right size and form ({@code SpotFinder}), that way of the sheet to lie which explains
 * most of them ({@code LayoutSearch}), and the edges of each mark as the picture has them ({@code EdgeFit}).
 */
package org.frisket.print.marks;
