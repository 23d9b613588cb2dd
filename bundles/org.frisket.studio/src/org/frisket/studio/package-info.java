/**
 * The studio folder: the one place for what belongs to a studio rather than to a job or a machine. It holds the studio's
 * own fonts, the fonts its jobs were made with, its preferences and its database.
 */
package org.frisket.studio;
