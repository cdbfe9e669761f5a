using System.Threading.Channels;
using Scrapwright.Planning;

namespace Scrapwright.Web.Planning;

/// <summary>Takes what a search reports on any of its threads and hands it on in that order. <see cref="Progress{T}"/> keeps no order.</summary>
internal sealed class ProgressQueue : IProgress<PlanProgress>
{
    private readonly Channel<PlanProgress> queue = Channel.CreateUnbounded<PlanProgress>(new UnboundedChannelOptions { SingleReader = true });

    internal ChannelReader<PlanProgress> Reader => queue.Reader;

    public void Report(PlanProgress value) => queue.Writer.TryWrite(value);

    internal void Complete() => queue.Writer.TryComplete();
}
