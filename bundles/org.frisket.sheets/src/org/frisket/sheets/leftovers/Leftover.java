package org.frisket.sheets.leftovers;

/**
 * A piece of a sheet that was kept.
 *
 * @param id     by which a sheet of a job refers to it; never given twice
 * @param stock  the id of its stock; null if none was chosen
 * @param colour as #rrggbb; null leaves it to the stock
 * @param width  in mm, as is {@code height}
 */
public record Leftover(String id, String stock, String colour, double width, double height) {
}
