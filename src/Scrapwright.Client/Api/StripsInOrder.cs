using System.Collections.Immutable;

namespace Scrapwright.Client.Api;

/// <summary>The strips of a glue-up of the latest plan in another order.</summary>
/// <param name="GlueUp">Id of the glue-up.</param>
/// <param name="Strips">Ids of its strips, lower edge first.</param>
public sealed record StripsInOrder(string GlueUp, ImmutableArray<string> Strips);
