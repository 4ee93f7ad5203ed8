/** What a room list tells of rooms and their openings, and lists that are plain tables. */
package org.wetmil.workbook.start.rooms;
