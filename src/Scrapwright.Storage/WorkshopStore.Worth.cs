using System.Collections.Immutable;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Storage;

public sealed partial class WorkshopStore
{
    /// <summary>What can be bought.</summary>
    public Task<ImmutableArray<Price>> GetPricesAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(async context => ListOf<Price>((await context.Shop.SingleOrDefaultAsync(cancellationToken))?.Prices), cancellationToken);

    /// <summary>Keeps what can be bought, in place of what was kept. No plan changes by it.</summary>
    public Task PutPricesAsync(ImmutableArray<Price> prices, CancellationToken cancellationToken = default) =>
        ReplaceAsync(new WorkshopContents { Prices = prices }, cancellationToken: cancellationToken);

    /// <summary>The maker's own jigs.</summary>
    public Task<ImmutableArray<Jig>> GetJigsAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(async context => ListOf<Jig>((await context.Shop.SingleOrDefaultAsync(cancellationToken))?.Jigs), cancellationToken);

    /// <summary>Keeps the maker's own jigs, in place of those kept. No plan changes by it.</summary>
    public Task PutJigsAsync(ImmutableArray<Jig> jigs, CancellationToken cancellationToken = default) =>
        ReplaceAsync(new WorkshopContents { Jigs = jigs }, cancellationToken: cancellationToken);

    private static ImmutableArray<T> ListOf<T>(string? json) => json is null ? [] : JsonSerializer.Deserialize<ImmutableArray<T>>(json, PlanJson.Options);
}
