using System.Runtime.InteropServices;

namespace Scrapwright.Cli;

/// <summary>Turns the first Ctrl+C or request to end into a cancellation; the second ends the program as usual.</summary>
internal sealed class StopSignal : IDisposable
{
    private readonly CancellationTokenSource source = new();
    private readonly PosixSignalRegistration[] registrations;

    internal StopSignal()
    {
        void Stop(PosixSignalContext context)
        {
            context.Cancel = !source.IsCancellationRequested;
            source.Cancel();
        }

        registrations = [PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop), PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop)];
    }

    internal CancellationToken Token => source.Token;

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var registration in registrations) registration.Dispose();
        source.Dispose();
    }
}
