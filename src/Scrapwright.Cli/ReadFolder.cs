using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Files;

namespace Scrapwright.Cli;

/// <summary>A workshop folder as commands take it: gifts as they are listed, and with the dates they are due on.</summary>
/// <param name="Listed">The workshop as its files have it.</param>
/// <param name="Years">Its occasions and what was given.</param>
/// <param name="Today">The day it is seen from.</param>
internal sealed record ReadFolder(PlanRequest Listed, GiftYears Years, DateOnly Today)
{
    /// <summary>The workshop with the date of every gift.</summary>
    internal PlanRequest Dated => Listed with { Gifts = Years.Dated(Listed.Gifts, Today) };

    /// <summary>Reads a folder: all of it, or every problem.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="today">The day it is seen from; null for today.</param>
    internal static FileOutcome<ReadFolder> Read(string path, DateOnly? today = null)
    {
        switch (WorkshopFolder.Read(path), WorkshopFolder.ReadYears(path))
        {
            case (FileOutcome<PlanRequest>.Read workshop, FileOutcome<GiftYears>.Read years):
                return new FileOutcome<ReadFolder>.Read(new(workshop.Content, years.Content, today ?? DateOnly.FromDateTime(DateTime.Now)), workshop.Doubts);
            case (FileOutcome<PlanRequest>.Refused refused, _):
                return new FileOutcome<ReadFolder>.Refused(refused.Problems, refused.More);

            // What makes the years unreadable makes the workshop unreadable, unless a file has changed in between.
            case (_, FileOutcome<GiftYears>.Refused refused):
                return new FileOutcome<ReadFolder>.Refused(refused.Problems, refused.More);
            default:
                throw new InvalidOperationException("An outcome of another kind.");
        }
    }
}
