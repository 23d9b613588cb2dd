package org.frisket.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;

import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Picture;
import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job leaves and enters an order book as one file, with its pictures in it. */
class PicturesTravelTest {

	/** As much as a small photograph. */
	private static final int BYTES = 300_000;

	@TempDir
	Path home;

	@Test
	void picturesGoAlongFromOneStudioToAnother() throws IOException, OrderException {
		StringBuilder base64 = new StringBuilder();
		for (int i = 0; i < BYTES; i++) {
			base64.append("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/".charAt(i * 31 % 64));
		}
		ImageBytes image = ImageBytes.parse(base64.toString());
		Job job = Jobs.create("job", "Place cards");
		Jobs.addPicture(Jobs.addLayer(job, "Print"), image, "image/png", 40, 30);
		OrderBook one = new OrderBook(new StudioFolder(home.resolve("one")));
		long number = one.takeIn(job, "Mara").number();
		Path file = home.resolve("cards.frjob");
		JobFile.save(one.open(number).job(), file);
		OrderBook other = new OrderBook(new StudioFolder(home.resolve("other")));
		Job arrived = other.open(other.takeIn(JobFile.load(file), "Jonas").number()).job();
		assertEquals(image, ((Picture) Jobs.elements(arrived).get(0)).getImage());
	}
}
