namespace Scrapwright.Storage;

/// <summary>The workshop's database cannot be used. The message is written for the maker: which file, what is wrong, what to do.</summary>
public sealed class WorkshopUnreadableException : Exception
{
    /// <summary>With a message for the maker.</summary>
    public WorkshopUnreadableException(string message)
        : base(message)
    {
    }

    /// <summary>With a message for the maker and the cause for the log.</summary>
    public WorkshopUnreadableException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    /// <summary>Without particulars.</summary>
    public WorkshopUnreadableException()
        : this("The workshop's database cannot be read.")
    {
    }
}
