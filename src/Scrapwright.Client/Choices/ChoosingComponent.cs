using Microsoft.AspNetCore.Components;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Plans;

namespace Scrapwright.Client.Choices;

/// <summary>A component that shows what the maker has decided, and is drawn again whenever that changes.</summary>
public abstract class ChoosingComponent : ComponentBase, IDisposable
{
    /// <summary>What the maker has decided.</summary>
    [Inject]
    protected KeptChoices Kept { get; set; } = null!;

    /// <inheritdoc/>
    public void Dispose()
    {
        Kept.Changed -= Again;
        GC.SuppressFinalize(this);
    }

    /// <inheritdoc/>
    protected override void OnInitialized() => Kept.Changed += Again;

    /// <summary>True when a glue-up is marked as glued.</summary>
    protected bool IsMarkedGlued(GlueUp glueUp) => Kept.Now.Glued.Any(g => g.Id == glueUp.Id);

    private void Again() => InvokeAsync(StateHasChanged);
}
