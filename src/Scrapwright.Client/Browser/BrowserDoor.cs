using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Scrapwright.Client.Browser;

/// <summary>What the screens need from the browser itself: focus, dialogs, kept text, saved files, event streams. One door, so that tests can stand in for it.</summary>
public sealed class BrowserDoor(IJSRuntime script) : IAsyncDisposable
{
    private Task<IJSObjectReference>? module;

    /// <summary>Text kept in the browser under a key, or null.</summary>
    public ValueTask<string?> ReadAsync(string key) => CallAsync<string?>("read", key);

    /// <summary>Keeps text in the browser; null forgets it.</summary>
    public ValueTask WriteAsync(string key, string? text) => CallAsync("write", key, text);

    /// <summary>Moves the focus to an element, and selects its text if asked.</summary>
    public ValueTask FocusAsync(ElementReference element, bool select = false) => CallAsync("focus", element, select);

    /// <summary>Moves the focus to the element with that id, if there is one.</summary>
    public ValueTask FocusAsync(string id) => CallAsync("focusById", id);

    /// <summary>Opens a dialog that takes the focus until it is closed.</summary>
    public ValueTask ShowDialogAsync(ElementReference dialog) => CallAsync("showDialog", dialog);

    /// <summary>Closes a dialog; the focus goes back to where it was.</summary>
    public ValueTask CloseDialogAsync(ElementReference dialog) => CallAsync("closeDialog", dialog);

    /// <summary>Calls the target's <c>UndoFromKeyboard</c> on Ctrl+Z outside of text.</summary>
    public ValueTask ListenForUndoAsync<T>(DotNetObjectReference<T> target)
        where T : class => CallAsync("listenForUndo", target);

    /// <summary>Calls the target's <c>LinesPasted</c> when several lines are pasted into a field.</summary>
    public ValueTask ListenForLinesAsync<T>(ElementReference input, DotNetObjectReference<T> target)
        where T : class => CallAsync("listenForLines", input, target);

    /// <summary>Lets the items of a list be dragged; the target's <c>StripOver</c> is told each place they come over, <c>StripDropped</c> where they are let go. Arrow keys do not scroll the page there.</summary>
    public ValueTask ListenForStripsAsync<T>(ElementReference list, DotNetObjectReference<T> target)
        where T : class => CallAsync("listenForStrips", list, target);

    /// <summary>Lets lines of a calendar be dragged onto days; the target's <c>LineDropped</c> is told which on which. Arrow keys on a chosen line do not scroll the page.</summary>
    public ValueTask ListenForDaysAsync<T>(ElementReference weeks, DotNetObjectReference<T> target)
        where T : class => CallAsync("listenForDays", weeks, target);

    /// <summary>Opens a stream of server-sent events; the target's <c>EventArrived</c> gets each event's text, <c>EventsOpen</c> is told when the line opens or breaks.</summary>
    /// <returns>Number of the stream, for closing it.</returns>
    public ValueTask<int> OpenEventsAsync<T>(string address, string name, DotNetObjectReference<T> target)
        where T : class => CallAsync<int>("openEvents", address, name, target);

    /// <summary>Closes a stream of events.</summary>
    public ValueTask CloseEventsAsync(int stream) => CallAsync("closeEvents", stream);

    /// <summary>Saves text as a file of the maker's.</summary>
    public ValueTask SaveAsync(string name, string mediaType, string text) => CallAsync("save", name, mediaType, text);

    /// <summary>Opens the browser's own dialog for printing the screen.</summary>
    public ValueTask PrintAsync() => CallAsync("printScreen");

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (module is { IsCompletedSuccessfully: true })
        {
            await (await module).DisposeAsync();
        }
    }

    private async ValueTask CallAsync(string name, params object?[] arguments) =>
        await (await ModuleAsync()).InvokeVoidAsync(name, arguments);

    private async ValueTask<TAnswer> CallAsync<TAnswer>(string name, params object?[] arguments) =>
        await (await ModuleAsync()).InvokeAsync<TAnswer>(name, arguments);

    private Task<IJSObjectReference> ModuleAsync() =>
        module ??= script.InvokeAsync<IJSObjectReference>("import", "./scrapwright.js").AsTask();
}
