using System.Collections.Immutable;

namespace Scrapwright.Client.Shell;

/// <summary>Deletes that can be taken back, the latest first. They stay until they are undone or dismissed.</summary>
public sealed class Undoing
{
    private ImmutableStack<Undo> stack = [];

    /// <summary>Told when something is put on or taken off.</summary>
    public event Action? Changed;

    /// <summary>What would be undone next; null when there is nothing.</summary>
    public Undo? Latest => stack.IsEmpty ? null : stack.Peek();

    /// <summary>How many can be undone.</summary>
    public int Count => stack.Count();

    /// <summary>Remembers how to take something back.</summary>
    public void Remember(Undo undo)
    {
        stack = stack.Push(undo);
        Changed?.Invoke();
    }

    /// <summary>Takes the latest back. It stays on when that fails, so that it can be tried again.</summary>
    /// <returns>What to tell the maker; empty when there was nothing to undo.</returns>
    public async Task<string> UndoLatestAsync()
    {
        if (Latest is not { } undo)
        {
            return "";
        }

        var failure = await undo.TakeBack();
        if (failure.Length > 0)
        {
            return failure;
        }

        stack = ImmutableStack.CreateRange(stack.Where(u => u != undo).Reverse());
        Changed?.Invoke();
        return undo.Thing + " is back.";
    }

    /// <summary>Forgets the latest.</summary>
    public void Dismiss()
    {
        if (!stack.IsEmpty)
        {
            stack = stack.Pop();
            Changed?.Invoke();
        }
    }

    /// <summary>Forgets all, for example when the workshop is emptied.</summary>
    public void Clear()
    {
        stack = [];
        Changed?.Invoke();
    }
}
