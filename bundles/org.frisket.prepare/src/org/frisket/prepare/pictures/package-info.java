/** Pictures of jobs, of pixels or drawn: where their files are, whether they can be read, how large they are, and their pixels. */
package org.frisket.prepare.pictures;
