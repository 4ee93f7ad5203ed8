package org.wetmil.workbook.audit;

import java.util.List;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.tables.TableMoves;

/**
 * A past bid as the list of jobs shows it.
 *
 * @param file name of its workbook
 * @param lines bid lines read
 * @param notFilled of them, those that are to count and lack paint and hours
 * @param paintGal paint of the whole bid in US gallons
 * @param hours person-hours of the whole bid
 * @param moves the bid with its own tables and with today's
 * @param fired checks that fired on its lines, in their order
 */
public record AuditedJob(
    String file,
    PastBid bid,
    int lines,
    int notFilled,
    double paintGal,
    double hours,
    TableMoves moves,
    List<FiredCheck> fired) {}
