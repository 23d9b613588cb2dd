package org.frisket.print.output;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;

import javax.imageio.ImageIO;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Picture;
import org.frisket.model.Sheet;
import org.frisket.testkit.SampleJobs;

/**
 * A place card of Harbour Lane, 80 by 50 mm, in the middle of a sheet of 200 by 150 mm: its edge is at 60, 50, 140 and 100 mm.
 * On the bench its upper left corner is the origin.
 */
final class SampleSheet {

	static final String CARD = "M0 0H80V50H0Z";

	final Job job = Jobs.create("job", "Place card");
	final Layer layer = Jobs.addLayer(job, "Card");
	final Sheet sheet;
	final Outline card;

	SampleSheet() {
		job.setNumber("10247");
		layer.setColour("#000000");
		card = outline(layer, CARD, OperationKind.CUT);
		sheet = Jobs.addSheet(job, null, 200, 150);
		Jobs.addPlacement(sheet, card.getId(), 100, 75, 0);
	}

	static Outline outline(Layer layer, String path, OperationKind kind) {
		Outline outline = Jobs.addOutline(layer, path);
		Jobs.addOperation(outline, kind);
		return outline;
	}

	/** Left half red, right half blue. */
	Picture picture(double width, double height) throws IOException {
		BufferedImage image = new BufferedImage(160, 100, BufferedImage.TYPE_INT_RGB);
		for (int y = 0; y < 100; y++) {
			for (int x = 0; x < 160; x++) {
				image.setRGB(x, y, x < 80 ? 0xff0000 : 0x0000ff);
			}
		}
		ByteArrayOutputStream png = new ByteArrayOutputStream();
		ImageIO.write(image, "png", png);
		Picture picture = Jobs.addPicture(layer, ImageBytes.of(png.toByteArray()), "image/png", width, height);
		Jobs.addOperation(picture, OperationKind.PRINT);
		return picture;
	}

	SheetFaces faces(boolean knockOut) {
		return SheetFaces.of(job, Map.of(job.getId(), SampleJobs.prepared(job)), knockOut, Tolerance.DEFAULT, Monitor.NONE).get(0);
	}

	PrintSheet print(PrintOptions options) {
		return PrintSheet.of(faces(options.knockOut()), options, Tolerance.DEFAULT, Monitor.NONE);
	}

	static byte[] pdf(PrintSheet print) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		PrintFile.write(print, Monitor.NONE, out);
		return out.toByteArray();
	}
}
